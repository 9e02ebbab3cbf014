// What do the home rigs say, in the numbers of the trade, and how well do they repeat?

import {
  type BatchFigure,
  type BatchFigures,
  type Block,
  batchFigures,
  doubtBars,
  figure,
  figureInShownUnit,
  findingBlocks,
  handChart,
  inShownUnit,
  keptOutAnswer,
  type Log,
  notebook,
  printFigure,
  printNumber,
  recipeShares,
  rigFindings,
  type Section,
  type ShownUnits,
  shownUnits,
  squeezeTable,
  type TestName,
  type Text,
  trialBond,
  trialCautions,
  trialData,
  trialReport,
  trialStanding,
  type UnitSystem,
  waterFindings,
} from "../lib/index.ts";

export default notebook(
  "Home rigs",
  (log) => {
    const { figures: rows, pooled, issues } = batchFigures(log);
    // What is left out is shown and teaches nothing of the rigs.
    const counted = rows.filter(({ batch }) => !batch.keptOut);
    const units = shownUnits(log);
    const report = trialReport(log);
    const water = waterFindings(report, log, units);
    const standing = trialStanding(counted, log, { units, gfn: report.gfn });
    const data = trialData(rows, units);
    const without = keptOutAnswer(report);
    return {
      title: log.title ? `Home rigs: ${log.title}` : "Home rigs",
      question: "What do the readings come to in the trade's numbers, and how well do the rigs repeat?",
      answer: [
        ...answer(counted, units),
        ...water.map(({ text }) => text),
        ...(without ? [without.text] : []),
      ],
      sections: [
        {
          role: "cautions",
          title: "Before you test",
          blocks: trialCautions(rows).map((caution): Block => ({ kind: "caution", caution })),
        },
        { ...data, blocks: [...data.blocks, ...recipeShares(rows)] },
        result(counted, pooled, log, units, handWithout(rows)),
        trialBond(rows, log),
        {
          role: "findings",
          title: "What the figures say",
          blocks: [
            ...findingBlocks([...water, ...standing.findings, ...rigFindings(counted)]),
            ...standing.blocks,
          ],
        },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(counted, pooled) }],
        },
      ],
      sources: [...new Set([...water.flatMap(({ source }) => source ?? []), ...standing.sources])],
      colophon: [
        `Log ${log.file}, fingerprint ${log.fingerprint}.`,
        ...(log.founder ? [`Kept by ${log.founder}.`] : []),
      ],
      issues,
      figures: Object.fromEntries(
        rows.map(({ batch, tests }) => [
          batch.name,
          Object.fromEntries(Object.values(tests).map((one) => [one.test, plain(one)])),
        ]),
      ),
    };
  },
  { question: "What do the bench tests come to, and how well do the rigs repeat?" },
);

const plain = ({ spread, value, unit, missing }: BatchFigure) => {
  const { low, high } = figure(spread);
  return { value, low, high, unit, atLeast: missing.length > 0 };
};

function answer(rows: readonly BatchFigures[], units: ShownUnits): Text[] {
  if (rows.length === 0) return ["No batch of this log has a test: the cards say how to make one."];
  const told = rows.slice(0, 3).map(({ batch, tests }): Text => {
    const figures = Object.values(tests)
      .filter(({ test }) => test !== "squeeze")
      .map((one) => `${one.test} ${textOf(one, units)}`);
    return [
      { strong: `${batch.name}: ` },
      figures.length > 0 ? `${figures.join(", ")}.` : "nothing that gives a figure.",
    ];
  });
  return rows.length > 3 ? [...told, `${rows.length - 3} more stand in the table.`] : told;
}

/** The figure in its unit; a strength in the other system's as well, in brackets. */
function textOf({ test, spread, value, unit, missing }: BatchFigure, units: ShownUnits): string {
  const { low, high } = figure(spread);
  const system = units.of(test);
  const told = (as: UnitSystem): string => {
    const shown = figureInShownUnit({ value, low, high }, unit, as);
    const after = shown.unit ? { unit: shown.unit } : {};
    if (low === high)
      return `${Number(shown.value.toPrecision(4))}${unit ? ` ${shown.unit}` : ""} (± not known)`;
    return printFigure({
      value: shown.value,
      low: Math.min(shown.low, shown.value),
      high: Math.max(shown.high, shown.value),
      atLeast: missing.length > 0,
      ...after,
    }).text;
  };
  if (unit !== "kPa") return told(system);
  const other = figureInShownUnit({ value, low, high }, unit, system === "US" ? "metric" : "US");
  return `${told(system)} (${Number(other.value.toPrecision(3))} ${other.unit})`;
}

type Pooled = ReturnType<typeof batchFigures>["pooled"];

function result(
  rows: readonly BatchFigures[],
  pooled: Pooled,
  log: Log,
  units: ShownUnits,
  without: string,
): Section {
  const blocks: Block[] = [repeatability(pooled, rows, units)];
  const aim = log.aims.find(({ test }) => test === "compactability");
  const hand = handChart(rows, aim);
  if (hand) blocks.push({ kind: "chart", chart: hand }, { kind: "prose", text: handWords(rows) + without });
  const seen = new Set<TestName>();
  for (const one of rows.flatMap(({ tests }) => Object.values(tests))) {
    if (seen.has(one.test) || one.test === "squeeze") continue;
    const shares = figure(one.spread).shares.filter(({ percent }) => percent >= 1);
    if (shares.length < 2) continue;
    seen.add(one.test);
    blocks.push({
      kind: "chart",
      chart: doubtBars({
        name: `doubt-${one.test.replaceAll(" ", "-")}`,
        of: one.test,
        shares: shares.map(({ id, source, percent }) => ({
          label: source.says ?? id,
          sharePercent: percent,
        })),
      }),
    });
  }
  return { role: "result", title: "How well the rigs repeat, and what the doubt comes from", blocks };
}

function repeatability(pooled: Pooled, rows: readonly BatchFigures[], shown: ShownUnits): Block {
  const units = new Map(
    rows.flatMap(({ tests }) => Object.values(tests).map(({ test, unit }) => [test, unit])),
  );
  const learnt = Object.entries(pooled) as [TestName, { sd: number; degreesOfFreedom: number }][];
  if (learnt.length === 0) {
    return {
      kind: "prose",
      text: "No test was repeated on one batch, so how well the rigs repeat is not known yet.",
    };
  }
  return {
    kind: "table",
    name: "repeatability",
    caption:
      "Repeatability of each test, learnt from every repeat in the log; it stands in where a test was done once",
    columns: [
      { head: "Test", align: "text" },
      { head: "Unit", align: "text" },
      { head: "Standard deviation of one reading", align: "number" },
      { head: "Degrees of freedom", align: "number" },
    ],
    rows: learnt.map(([test, { sd, degreesOfFreedom }]) => {
      const as = inShownUnit(sd, units.get(test) ?? "", shown.of(test));
      return [
        test,
        as.unit || "permeability number",
        { text: String(Number(as.value.toPrecision(2))), number: as.value },
        printNumber(degreesOfFreedom, 0),
      ];
    }),
  };
}

/** Which batches the chart of the hand is without though they were squeezed and rammed. */
function handWithout(rows: readonly BatchFigures[]): string {
  const out = rows.flatMap(({ batch: { name, keptOut }, tests: { squeeze, compactability } }) =>
    keptOut && squeeze && compactability ? [name] : [],
  );
  return out.length === 0 ? "" : ` Not in the chart, as the log leaves it out: ${out.join(", ")}.`;
}

function handWords(rows: readonly BatchFigures[]): string {
  const readings = rows.flatMap(({ tests: { squeeze, compactability } }) => {
    if (!squeeze || !compactability) return [];
    return [
      { step: Math.round(squeeze.value) as 1 | 2 | 3 | 4 | 5, compactabilityPercent: compactability.value },
    ];
  });
  return squeezeTable(readings).inOrder
    ? "A wetter squeeze went with a higher compactability throughout: the hand is in order with the tube."
    : "A wetter squeeze did not always go with a higher compactability: the hand is not calibrated yet.";
}

function nextSteps(rows: readonly BatchFigures[], pooled: Pooled): Text[] {
  const tests = [...new Set(rows.flatMap(({ tests: own }) => Object.keys(own)))].filter(
    (test) => test !== "squeeze",
  );
  const unrepeated = tests.filter((test) => !(test in pooled));
  const missing = new Set(rows.flatMap(({ tests: own }) => Object.values(own).flatMap((one) => one.missing)));
  return [
    ...(unrepeated.length > 0
      ? [`Repeat on one batch: ${unrepeated.join(", ")}. Three specimens tell how well the rig repeats.`]
      : []),
    ...(missing.has("scale check") ? ["Check the scale with known weights, and write within."] : []),
    ...(missing.has("blank run")
      ? ["Run the permeability rig without a specimen once, and write its blank."]
      : []),
    "Make a moisture trial with these rigs: five batches from dry to wet.",
  ];
}
