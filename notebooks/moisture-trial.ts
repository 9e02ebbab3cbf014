// At which water are the founder's aims met, how sure is that, how much to add, and which batch to make next?

import {
  type BatchFigures,
  type Block,
  batchFigures,
  type Finding,
  findingBlocks,
  keptOutAnswer,
  nextBatchWords,
  notebook,
  permeabilityByMoistureChart,
  printTestIn,
  randomOrder,
  recipeShares,
  type Section,
  shownUnits,
  type Text,
  type TrialReport,
  trialBond,
  trialCautions,
  trialData,
  trialFindings,
  trialReport,
  trialResult,
  trialStanding,
  typicalPermeability,
  waterFindings,
} from "../lib/index.ts";

export default notebook(
  "Moisture trial",
  (log) => {
    const report = trialReport(log, log.axis === "clay" ? { axis: "moisture" } : {});
    const shown = report.offAxis.length === 0 ? report.shown : batchFigures(log).figures;
    const rows = shown.filter(({ batch }) => !batch.keptOut);
    const units = shownUnits(log);
    const found = trialFindings(report, printTestIn(units));
    const water = waterFindings(report, log, units);
    const standing = trialStanding(rows, log, { units, varied: report.axis, gfn: report.gfn });
    const nextBatch = nextBatchWords(report, units);
    const findings = [...found.slice(0, 1), ...water, ...found.slice(1), ...standing.findings];
    return {
      title: log.title ? `Moisture trial: ${log.title}` : "Moisture trial",
      question: "At which water are the aims met, how sure is that, and which batch comes next?",
      answer: answer(report, found, water, nextBatch),
      sections: [
        {
          role: "cautions",
          title: "Before you mix and test",
          blocks: trialCautions(shown).map((caution): Block => ({ kind: "caution", caution })),
        },
        withShares(trialData(shown, units), shown),
        withTypical(report, trialResult(report, units)),
        trialBond(shown, log),
        {
          role: "findings",
          title: "What the figures say",
          blocks: [...findingBlocks(findings), ...standing.blocks],
        },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(report, findings, nextBatch) }],
        },
      ],
      sources: [
        ...new Set([...[...found, ...water].flatMap(({ source }) => source ?? []), ...standing.sources]),
      ],
      colophon: [
        `Log ${log.file}, fingerprint ${log.fingerprint}.`,
        ...(log.founder ? [`Kept by ${log.founder}.`] : []),
      ],
      issues: report.issues,
      figures: {
        aim: report.result?.window ? report.result.aim : null,
        window: report.result?.window ?? null,
        chanceAtAim: report.result?.chanceAtAim ?? null,
        batches: report.rows.length,
      },
    };
  },
  { question: "At which water are the aims met, how much to add now, and which batch comes next?" },
);

/** What casts doubt on all, the aim or why there is none, the aim by the tube, its chance; then what to do with water. */
function answer(
  report: TrialReport,
  found: readonly Finding[],
  water: readonly Finding[],
  nextBatch: string | undefined,
): Text[] {
  const { rows, offAxis } = report;
  const without = keptOutAnswer(report);
  const out = without ? [without.text] : [];
  if (rows.length === 0)
    return ["No batch of this log has a moisture: test some, and the curves follow.", ...out];
  const decides = found.findIndex(({ code }) => aimCodes.includes(code));
  const lead = decides > 0 ? [found[0]!, found[decides]!] : found.slice(0, 1);
  const told = [...lead, ...found.filter(({ code }) => besideAim.includes(code)), ...water];
  const left = offAxis.length > 0 ? [`Without a moisture, and so left out: ${offAxis.join(", ")}.`] : [];
  const few = found.some(({ code }) => code === "trial/too-few-batches");
  return [
    ...told.map(({ text }, k): Text => (k === 0 ? [{ strong: text }] : text)),
    ...(few && nextBatch ? [nextBatch] : []),
    ...out,
    ...left,
  ];
}

const aimCodes = [
  "trial/aim",
  "trial/aim-open",
  "trial/no-window",
  "trial/too-few-batches",
  "trial/no-aims",
  "trial/no-curve",
];
const besideAim = ["trial/two-varied", "trial/aim-by-tube", "trial/chance"];

function withShares(data: Section, rows: readonly BatchFigures[]): Section {
  return { ...data, blocks: [...data.blocks, ...recipeShares(rows)] };
}

/** The published course of permeability over water, with the founder's batches on it. */
function withTypical({ axis, rows, x }: TrialReport, result: Section): Section {
  const batches = rows.flatMap(({ batch, tests }, i) => {
    const permeability = tests.permeability;
    return permeability ? [{ label: batch.name, x: x[i]!.value, y: permeability.value }] : [];
  });
  const clay = rows
    .map(({ recipe }) => recipe?.clayOfDryMixPercent.value)
    .filter((value) => value !== undefined);
  if (axis !== "moisture" || batches.length === 0 || clay.length === 0) return result;
  const clayPercent = clay.reduce((all, value) => all + value, 0) / clay.length;
  // Outside its clays the published course says nothing of these batches.
  if (typicalPermeability({ clayPercent, moistureOfDampPercent: 4 }).low === undefined) return result;
  const chart = permeabilityByMoistureChart({ name: "typical-permeability", clayPercent, batches });
  return { ...result, blocks: [...result.blocks, { kind: "chart", chart }] };
}

function nextSteps(
  { rows, next, result, confounded, levels }: TrialReport,
  findings: readonly Finding[],
  nextBatch: string | undefined,
): Text[] {
  const steps: Text[] = [];
  const has = (code: string): boolean => findings.some((finding) => finding.code === code);
  if (rows.length === 0)
    steps.push("Make five batches from dry to wet, and test moisture and compactability of each.");
  if (has("trial/too-few-batches")) {
    steps.push(
      levels < 3
        ? "Make batches at other waters, both sides of these and half a point apart, until there are three levels and five batches."
        : "Make batches until there are five, the new ones where the gaps between the waters are widest.",
    );
  }
  if (nextBatch) steps.push(`${nextBatch} Mull and rest it like the others.`);
  else if (result?.window && next?.enough)
    steps.push("Make the batch at the aim once more, and test it twice, to confirm it.");
  if (confounded.some(({ companion }) => companion !== "density")) {
    const order = randomOrder(
      rows.map(({ batch }) => batch.name),
      "next round",
    );
    steps.push(`For the next round, make them fresh and in this shuffled order: ${order.join(", ")}.`);
  }
  if (has("trial/usual-ranges-used"))
    steps.push("Write your own aims into the log as soon as you know what casts well.");
  if (steps.length === 0) steps.push("Repeat the batch nearest to the aim, and test it twice.");
  return steps;
}
