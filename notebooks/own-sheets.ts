// What do the founder's own sheets say: every sheet of the log, worked out, with its charts?

import {
  type Block,
  footText,
  type Log,
  logSheets,
  notebook,
  ownSheets,
  type Sheet,
  sheetFindings,
  sheetFunctions,
  sheetSection,
  type Text,
} from "../lib/index.ts";

export default notebook(
  "Own sheets",
  (log) => {
    const sheets = logSheets(log);
    const findings = sheets.flatMap((sheet) => sheetFindings(sheet));
    return {
      title: log.title ? `Own sheets: ${log.title}` : "Own sheets",
      question:
        sheets.length === 1
          ? `What does the sheet "${sheets[0]!.title ?? sheets[0]!.name}" come to?`
          : "What do the sheets of this log come to?",
      answer: answer(sheets),
      sections: [
        {
          role: "cautions",
          title: "Before you handle what they are about",
          blocks: [{ kind: "caution", caution: ownSheets }],
        },
        ...sheets.map((sheet, k) => sheetSection(sheet, { logged: log.sheets[k]!, scales: log.scales })),
        {
          role: "findings",
          title: "What the figures say",
          blocks: findings.map((finding): Block => ({ kind: "finding", finding })),
        },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(log, sheets) }, sheetFunctions()],
        },
      ],
      sources: [...new Set(findings.flatMap(({ source }) => (source ? [source] : [])))],
      issues: sheets.flatMap(({ issues }) => issues),
      figures: Object.fromEntries(sheets.map((sheet) => [sheet.name, plainFigures(sheet)])),
    };
  },
  { question: "What do the founder's own sheets come to, with a ± on every figure?" },
);

/** The feet of the first sheets, figures first. */
function answer(sheets: readonly Sheet[]): Text[] {
  if (sheets.length === 0)
    return ["This log has no sheet: write one under sheets, and it is worked out here."];
  const told = sheets.flatMap((sheet): Text[] => {
    const feet = sheet.foot.flatMap((one) => {
      const text = footText(one);
      return text === undefined ? [] : [`${one.name} ${text}`];
    });
    if (feet.length === 0) return [];
    return [[{ strong: `${feet.slice(0, 3).join(", ")}` }, ` (${sheet.title ?? sheet.name}).`]];
  });
  if (told.length === 0) return ["No figure of a foot could be worked out; the rows stand below."];
  const more = told.length - 3;
  if (more <= 0) return told;
  return [
    ...told.slice(0, 3),
    more === 1 ? "One more sheet stands below." : `${more} more sheets stand below.`,
  ];
}

function plainFigures({ foot, rowCount }: Sheet): unknown {
  const feet = foot.map(({ name, cell }) => {
    if (cell.kind !== "figure") return [name, null];
    const { value, figure, unit, atLeast } = cell;
    const ends = figure.sources.length === 0 ? [value, value] : [figure.low, figure.high];
    return [
      name,
      {
        value,
        low: ends[0],
        high: ends[1],
        ...(unit ? { unit: unit.text } : {}),
        ...(atLeast || figure.lost ? { atLeast: true } : {}),
      },
    ];
  });
  return { rows: rowCount, foot: Object.fromEntries(feet) };
}

function nextSteps(log: Log, sheets: readonly Sheet[]): Text[] {
  const unchecked = log.scales.filter(({ withinG }) => withinG === undefined);
  const footless = sheets.filter(({ foot }) => foot.length === 0);
  const faulty = sheets.filter(({ issues }) => issues.some(({ severity }) => severity === "error"));
  return [
    ...faulty.map(
      ({ name }) => `Put right what is wrong in ${name}: each line is named under "What went wrong".`,
    ),
    ...(unchecked.length > 0
      ? [
          `Check the ${unchecked.map(({ name }) => name).join(" and the ")} with known weights, and write within.`,
        ]
      : []),
    ...footless.map(({ name }) => `Give ${name} a foot, such as a mean, where one figure is wanted.`),
    "Add a row each time; the same formulas work it out.",
  ];
}
