// The table of published figures as Markdown, from judged rows; nothing in it is written by hand.

import { type Judged, type Published, printed, type Section, type Tag, tags } from "./published.ts";
import { type Source, sources } from "./sources.ts";
import { simulated, unchecked } from "./unchecked.ts";

export interface JudgedSection extends Section {
  readonly judged: readonly Judged[];
}

/** Rows that hold a figure which somebody else has printed, right or wrong. */
const fromPrint: readonly Tag[] = ["read", "from memory", "misprint"];

export const sourcesOf = ({ source }: Published): readonly Source[] =>
  source === undefined ? [] : typeof source === "string" ? [source] : source;

export interface Counts {
  readonly rows: number;
  readonly printedRows: number;
  readonly printedFigures: number;
  readonly printedSources: number;
  readonly byTag: ReadonlyMap<Tag, number>;
}

export function countsOf(rows: readonly Published[]): Counts {
  const out = rows.filter((row) => fromPrint.includes(row.tag) && row.source !== undefined);
  return {
    rows: rows.length,
    printedRows: out.length,
    printedFigures: out.reduce((all, { theirs }) => all + theirs.length, 0),
    printedSources: new Set(out.flatMap(sourcesOf)).size,
    byTag: new Map(tags.map((tag) => [tag, rows.filter((row) => row.tag === tag).length])),
  };
}

const cell = (text: string): string => text.replaceAll("|", "\\|");

function shortened(list: readonly string[]): string {
  if (list.length <= 5) return list.join("; ");
  return `${list.slice(0, 2).join("; ")} … ${list.at(-1)} (${list.length} figures)`;
}

/** Ours to one digit more than theirs, or to the digits that are stated. */
function oursText(mine: number | string, theirs: string | undefined, row: Published): string {
  if (typeof mine === "string") return mine;
  const digits = theirs === undefined ? 4 : (printed(theirs)?.digits ?? 4) + 1;
  const stated = row.agree && "digits" in row.agree ? row.agree.digits : digits;
  const rounded = mine.toPrecision(Math.min(digits, stated, 13));
  const power = theirs !== undefined && /e/.test(theirs);
  return (power ? Number(rounded).toExponential() : String(Number(rounded)))
    .replace(/^-/, "−")
    .replace("e+", "e");
}

function line({ row, ours, agreed }: Judged): string {
  const beside = row.agree && "instead" in row.agree ? row.agree.instead : row.theirs;
  const between = row.agree && ("between" in row.agree || "beyond" in row.agree);
  const mine = ours.map((value, k) => oursText(value, between ? undefined : beside[k], row));
  const cells = [
    row.figure,
    sourcesOf(row)
      .map((key) => sources[key])
      .join("; ") || "none",
    shortened(row.theirs.map((text) => text.replace(/^-/, "−"))),
    shortened(mine),
    agreed,
    row.note ? `${row.tag}; ${row.note}` : row.tag,
  ];
  return `| ${cells.map(cell).join(" | ")} |`;
}

const HEAD = "| published figure | source | theirs | ours | digits agreed | tag |\n|---|---|---|---|---|---|";

export function readme(sections: readonly JudgedSection[]): string {
  const counts = countsOf(sections.flatMap(({ rows }) => rows));
  const perTag = tags.map((tag) => `${counts.byTag.get(tag)} ${tag}`).join(", ");
  return `${[
    "# Published figures that the tests reproduce",
    "Written by `npm run references` from the rows that the tests hold (rows.test.ts); not by hand.",
    `**${counts.printedFigures} printed figures in ${counts.printedRows} rows from ${counts.printedSources} sources**, and ${counts.rows - counts.printedRows} rows of other figures from outside the library. Rows by tag: ${perTag}.`,
    [
      "- **read**: in the source or an excerpt of it. **from memory**: not read; where parts of a row differ, it has the weaker tag.",
      "- **misprint**: does not follow from its own inputs. The test holds our figure and that the printed one is another.",
      "- **common practice**: no source. **by hand**: worked out here, outside the library, from figures that the source gives.",
      "- **derived**: from a derivation of our own. **apart**: by a program written apart from the library. **computed there**: by a general-purpose library, whose version is named.",
      "- *digits agreed*: `all 4`, ours rounds to all four digits that are printed; `9 of 15`, the first nine are the same; of several figures the one that agrees least.",
    ].join("\n"),
    "NIST data files stand in `nist/` with their source lines; they are works of the US Government. Every usual range, curve and published point of the library, with source and tag: [bands.md](bands.md).",
    ...sections.map(({ title, file, judged }) =>
      [`## ${title}`, `Rows: ${file}`, [HEAD, ...judged.map(line)].join("\n")].join("\n\n"),
    ),
    `## What could not be checked, and why`,
    unchecked.map(({ what, why }) => `- ${what}: ${why}`).join("\n"),
    "## Simulated truth",
    "Not published figures: known truths made up by seeded generators in other tests, and how often our intervals hold them. `npm run honesty` prints more.",
    [
      "| what | how many | covered | test |\n|---|---|---|---|",
      ...simulated.map((row) => `| ${row.map(cell).join(" | ")} |`),
    ].join("\n"),
  ].join("\n\n")}\n`;
}
