// How fine is the sand, how sure is that, how are its grains spread, and what to do next?

import {
  type Band,
  type Block,
  type Bond,
  bands,
  byFineness,
  compareSands,
  dryingHeat,
  type Finding,
  figureText,
  grainData,
  grainNextSteps,
  grainResult,
  type Issue,
  type Log,
  manySands,
  metalNamed,
  neighbourFindings,
  noBand,
  notebook,
  type SandComparison,
  type SandReport,
  type Section,
  saidTogether,
  sandReports,
  sandsFindings,
  sievedUnits,
  silicaDust,
  type Text,
  textWithCode,
} from "../lib/index.ts";

export default notebook(
  "Grain fineness",
  (log) => {
    const reports = sandReports(log);
    const ranges = usualRanges(log);
    const comparisons = saidTogether(compared(reports).map(({ finding }) => finding));
    const broken = log.sands.flatMap(({ sievings }) => sievings.filter(({ usable }) => !usable));
    const findings = [
      ...comparisons,
      ...(manySands(reports) ? neighbourFindings(reports) : []),
      ...sandsFindings(reports, ranges),
      ...rangeless(log, ranges),
    ];
    return {
      title: log.title ? `Grain fineness: ${log.title}` : "Grain fineness",
      question:
        reports.length > 1
          ? "How fine are these sands, how sure is that, and are they one sand or another?"
          : "How fine is this sand, and how sure is that?",
      answer: answer(reports, comparisons),
      sections: [
        cautions(reports),
        grainData(reports, sievedUnits(log)),
        grainResult(reports, ranges),
        { role: "findings", title: "What the figures say", blocks: findings.map(asBlock) },
        {
          role: "next",
          title: "What to do next",
          blocks: [
            {
              kind: "list",
              items: grainNextSteps(reports, findings, broken.length > 0 || reports.length === 0).map(
                textWithCode,
              ),
            },
          ],
        },
      ],
      sources: sources(findings),
      colophon: [
        `Log ${log.file}, fingerprint ${log.fingerprint}.`,
        ...(log.founder ? [`Kept by ${log.founder}.`] : []),
      ],
      issues: reports.flatMap((report): readonly Issue[] => report.issues),
      figures: Object.fromEntries(reports.map((report) => [report.sand.name, plainFigures(report)])),
    };
  },
  { question: "How fine is the sand, how sure is that, and how does it compare?" },
);

const asBlock = (finding: Finding): Block => ({ kind: "finding", finding });

/** The usual ranges for the log's metal and bond; none without both. */
function usualRanges({ metal, bond }: Log): readonly Band[] {
  const known = metal === undefined ? undefined : metalNamed(metal);
  return known && bond ? bands({ metal: known, bond: bond as Bond, property: "fineness" }) : [];
}

function rangeless({ metal, bond }: Log, ranges: readonly Band[]): Finding[] {
  return metal && bond && ranges.length === 0 ? [noBand(metal, bond)] : [];
}

/** Each sand against the first that can be compared; many are compared in their table. */
function compared(reports: readonly SandReport[]): readonly SandComparison[] {
  if (manySands(reports)) return [];
  const [first, ...others] = reports.filter(({ printed, trusted }) => printed && trusted);
  return first ? others.flatMap((second) => compareSands(first, second) ?? []) : [];
}

function answer(reports: readonly SandReport[], comparisons: readonly Finding[]): Text[] {
  if (reports.length === 0) return ["No sieving in this log can be worked out: see below what went wrong."];
  if (manySands(reports)) return answerOfMany(reports);
  const first = reports.find(({ printed, trusted }) => printed && trusted);
  const figures = reports.map((report): Text => {
    const { sand, trusted, printed } = report;
    if (!printed)
      return `${sand.name}: somewhere from ${figureText(report)}; too little was measured to say more.`;
    if (!trusted)
      return sand.stateSaid
        ? `${sand.name}: ${figureText(report)} with its clay on, which is no fineness number.`
        : `${sand.name}: ${figureText(report)}, and no fineness number until the log says that it is new, or washed.`;
    const what = report === first ? " (grain fineness number, 95 % interval)." : ".";
    return [{ strong: `${sand.name}: ${figureText(report)}` }, what];
  });
  return [...figures, ...comparisons.map(({ text }) => text)];
}

function answerOfMany(reports: readonly SandReport[]): Text[] {
  const sorted = byFineness(reports).filter(({ printed, trusted }) => printed && trusted);
  const without = reports.length - sorted.length;
  const [coarsest, finest] = [sorted[0], sorted.at(-1)];
  const rest =
    without === 0 ? "" : ` ${without === 1 ? "One sand has" : `${without} sands have`} no number yet.`;
  if (!coarsest || !finest) return [`${reports.length} sands were sieved, and none has a number yet.`];
  return [
    [
      { strong: `${figureText(coarsest)} to ${figureText(finest)}` },
      ` (grain fineness number, 95 % intervals): from ${coarsest.sand.name}, the coarsest of ${sorted.length} sands, to ${finest.sand.name}, the finest.${rest} The table of results has each, and how much finer it is than the one before.`,
    ],
    ...neighbourFindings(reports).map(({ text }) => text.replace(/:.*/s, ".")),
  ];
}

function cautions(reports: readonly SandReport[]): Section {
  // Sand that was washed was dried, and so will be sand that still has to be.
  const washed = reports.some(
    ({ sievings, trusted }) => !trusted || sievings.some((sieving) => sieving.washed === true),
  );
  const needed = washed ? [silicaDust, dryingHeat] : [silicaDust];
  return {
    role: "cautions",
    title: "Before you sieve",
    blocks: needed.map((caution) => ({ kind: "caution", caution })),
  };
}

function sources(findings: readonly Finding[]): string[] {
  const always = [
    "Multipliers of the grain fineness number: Univ. Técnica Estatal de Quevedo task sheets 2019; 3 to 200 also in a foundry entry citing GB/T 9442",
    "Sieve openings and their tolerance: ASTM E11-17, ISO 3310-1:2016",
  ];
  const all = [...new Set([...always, ...findings.flatMap(({ source }) => (source ? [source] : []))])];
  // Two ranges told in one sentence name both sources together.
  return all.filter((one) => !all.some((other) => other !== one && other.includes(one)));
}

function plainFigures({ fineness, printed, possible, trusted, fines, statistics }: SandReport): unknown {
  const { value, low, high } = fineness.figure;
  return {
    grainFinenessNumber: printed
      ? { value, low, high, atLeast: fineness.missing.length > 0, printed: printed.text }
      : null,
    possible,
    trusted,
    finesPercent: fines.percent ?? null,
    d50Mm: statistics.d50Mm ?? null,
  };
}
