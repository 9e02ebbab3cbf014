// How does clay move strength and permeability, where do the founder's batches stand, and did a change help?

import {
  type Block,
  blockComparisons,
  type Finding,
  findingBlocks,
  keptOutAnswer,
  type Log,
  nextBatchWords,
  notebook,
  permeabilityByClayChart,
  printTestIn,
  recipeShares,
  type Section,
  type ShownUnits,
  shownUnits,
  strengthByClayChart,
  type TestName,
  type Text,
  type TrialReport,
  temperChart,
  trialBond,
  trialCautions,
  trialData,
  trialFindings,
  trialReport,
  trialResult,
  trialStanding,
  waterFindings,
} from "../lib/index.ts";

export default notebook(
  "Clay trial",
  (log) => {
    const report = trialReport(log, { axis: "clay" });
    const units = shownUnits(log);
    const compared = blockComparisons(report, units);
    const found = [...trialFindings(report, printTestIn(units)), ...compared.map(({ finding }) => finding)];
    const standing = trialStanding(report.rows, log, { units, varied: "clay", gfn: report.gfn });
    const water = waterFindings(report, log, units);
    const findings = [...found, ...water, ...standing.findings];
    const data = trialData(report.shown, units);
    return {
      title: log.title ? `Clay trial: ${log.title}` : "Clay trial",
      question: "What does more or less clay do to this sand, and how sure is that?",
      answer: answer(report, found),
      sections: [
        {
          role: "cautions",
          title: "Before you mix and test",
          blocks: trialCautions(report.shown).map((caution): Block => ({ kind: "caution", caution })),
        },
        { ...data, blocks: [...data.blocks, ...recipeShares(report.shown)] },
        withoutNextChart(trialResult(report, units)),
        trialBond(report.shown, log),
        typical(report, log, units),
        {
          role: "result",
          title: "Before and after",
          // What the batches were tempered to, and what cannot be told from no difference, is told in a sentence alone.
          blocks: compared
            .filter(({ figures: { test, low, high } }) => test !== "compactability" && (low > 0 || high < 0))
            .map(({ chart }): Block => ({ kind: "chart", chart })),
        },
        {
          role: "findings",
          title: "What the figures say",
          blocks: [...findingBlocks(findings), ...standing.blocks],
        },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(report, nextBatchWords(report, units)) }],
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
        batches: report.rows.length,
        comparisons: compared.map(({ figures }) => figures),
      },
    };
  },
  { question: "What does more or less clay do, and did a change help?" },
);

/** The step that follows says where the next batch helps: the page is long enough. */
function withoutNextChart(result: Section): Section {
  const isNext = (block: Block): boolean => block.kind === "chart" && block.chart.name === "next-batch";
  return { ...result, blocks: result.blocks.filter((block) => !isNext(block)) };
}

function answer(report: TrialReport, findings: readonly Finding[]): Text[] {
  const without = keptOutAnswer(report);
  const out = without ? [without.text] : [];
  if (report.rows.length === 0)
    return [
      "No batch of this log says how much clay and sand went in: write made of, and the curves follow.",
      ...out,
    ];
  const both = findings.filter(({ code }) => code === "trial/two-varied");
  const told = [...findings.slice(0, 2 - both.length), ...both];
  return [...told.map(({ text }, k): Text => (k === 0 ? [{ strong: text }] : text)), ...out];
}

/** What the trade has published on clay, with the founder's batches on it. */
function typical({ rows, x }: TrialReport, { bond }: Log, units: ShownUnits): Section {
  const points = (test: TestName) =>
    rows.flatMap(({ batch, tests }, i) => {
      const one = tests[test];
      return one ? [{ label: batch.name, x: x[i]!.value, y: one.value }] : [];
    });
  const mean = (test: TestName): number | undefined => {
    const values = rows.flatMap(({ tests }) => (tests[test] ? [tests[test].value] : []));
    return values.length > 0 ? values.reduce((all, value) => all + value, 0) / values.length : undefined;
  };
  const [moisture, compactability] = [mean("moisture"), mean("compactability")];
  const washed = rows.some(({ tests }) => tests["clay by wash"]);
  const blocks: Block[] = [
    {
      kind: "prose",
      text: `Your batches stand at the clay that was added, taken as live; the relations count live clay, and some of a bag may be dead.${washed ? " Clay by wash counts silt as well, and is not drawn here." : ""}`,
    },
  ];
  if (bond === "bentonite" && moisture !== undefined && compactability !== undefined) {
    const at = { bond, moistureOfDampPercent: moisture } as const;
    const strength = points("green compression");
    const permeability = points("permeability");
    const wet = points("moisture");
    if (strength.length > 0) {
      const chart = strengthByClayChart({
        name: "typical-strength",
        ...at,
        compactabilityPercent: compactability,
        batches: strength,
        takenAsLive: true,
        strengthUnit: units.of("green compression") === "US" ? "psi" : "kPa",
      });
      blocks.push({ kind: "chart", chart });
    }
    if (permeability.length > 0) {
      blocks.push({
        kind: "chart",
        chart: permeabilityByClayChart({
          name: "typical-permeability",
          ...at,
          takenAsLive: true,
          batches: permeability,
        }),
      });
    }
    if (wet.length > 0)
      blocks.push({
        kind: "chart",
        chart: temperChart({
          name: "temper",
          clayKind: "not known",
          compactabilityPercent: compactability,
          takenAsLive: true,
          batches: wet,
        }),
      });
  }
  return {
    role: "result",
    title: "Beside what others have published",
    blocks: blocks.length > 1 ? blocks : [],
  };
}

function nextSteps({ rows, levels }: TrialReport, nextBatch: string | undefined): Text[] {
  if (rows.length === 0) return ["Weigh sand, clay and water of each batch, and write them under made of."];
  if (levels < 3)
    return ["Make batches at three clay contents or more, each tempered to one compactability."];
  if (nextBatch) return [nextBatch];
  return ["Repeat the clay that casts best, mulled twice as long, and see whether strength still rises."];
}
