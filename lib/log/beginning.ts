// One way into a log: what a new founder wants to do first, and the invented log that shows how.

export interface Beginning {
  /** As it is asked for: "moisture-trial". */
  readonly name: string;
  /** For a list, in one line. */
  readonly says: string;
  /** The notebook that makes its page. */
  readonly notebook: string;
  /** The cards to print for it. */
  readonly cards: readonly string[];
  /** Its first line. */
  readonly does: string;
  /** The hazard, which stands before the figures. */
  readonly hazard: string;
  /** The log's own lines. */
  readonly body: string;
}

const example = "my-sands.yaml";

/** The lines at the top: what it is, that it is invented, what to do next, the hazard, how to write. */
export function headLines({ does, cards, notebook, hazard }: Beginning, file: string): string {
  const name = /^[\w.@+-]+$/.test(file) ? file : example;
  const steps = [
    ...cards.map((card) => [`mullbook card ${card}`, "a sheet for the bench, to print"]),
    [`mullbook check ${name}`, "what is wrong, with line and remedy"],
    [`mullbook write ${notebook} ${name}`, "the page"],
    [`mullbook write guide ${name}`, "where you are, and what comes next"],
  ] as const;
  const width = Math.max(...steps.map(([call]) => call!.length));
  return [
    does,
    'Every figure here is INVENTED: write your own over them, then say "invented: no".',
    "Next, in this folder:",
    ...steps.map(([call, gives]) => `  ${call!.padEnd(width)}   ${gives}`),
    "",
    `${hazard} Local rules come first.`,
    "",
    "How to write:",
    "  name: value            a space after the colon; two spaces in front of what belongs to the line above",
    "  12.4 or 12.4 g         a decimal point, never a comma; oz, lb, kg are understood as well",
    "  12.4 ± 0.1 g           surely within 0.1 g; where the keyboard has no ±, 12.4 +/- 0.1 g",
    '  "text: with a colon"   text with a colon or a # goes in quotes',
    "  2026-03-02             a day: year-month-day",
  ]
    .map((line) => `# ${line}`.trimEnd())
    .join("\n");
}

/** What every short log begins with: who, what is poured, and the scale. */
export const whoAndScale = (title: string): string => `format: 1
title: ${title}
founder: (your name)
invented: yes                 # the figures below are made up
metal: aluminium              # what you pour
bond: bentonite               # bentonite, or natural for a sand that came with its own clay

scales:
  kitchen scale: { reads to: 0.1 g, within: 0.2 g }   # within: after a check with known weights (card scale)
`;
