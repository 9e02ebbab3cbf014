// How much of each sand makes the wanted fineness or grain curve, how surely, and at what cost?

import {
  type BlendReport,
  blendFindings,
  blendingDust,
  blendNext,
  blendNumberText,
  blendReport,
  blendResult,
  blendText,
  grainData,
  type Log,
  type NoBlend,
  notebook,
  type PageSpec,
  type Section,
  sandReports,
  sievedUnits,
  type Text,
  turningTub,
} from "../lib/index.ts";

export default notebook(
  "Blend",
  (log) => {
    const report = blendReport(log);
    return typeof report === "string" ? without(log, report) : page(log, report);
  },
  { question: "How much of each sand makes the wanted fineness or grain curve, and how surely?" },
);

const cautions: Section = {
  role: "cautions",
  title: "Before you blend",
  blocks: [blendingDust, turningTub].map((caution) => ({ kind: "caution", caution })),
};

function page(log: Log, report: BlendReport): PageSpec {
  const findings = blendFindings(report);
  const { target, sands } = report;
  const wanted = target.kind === "number" ? target.words : `the grain curve of ${target.report.sand.name}`;
  const sieved = [...sands.map((sand) => sand.report), ...(target.kind === "curve" ? [target.report] : [])];
  return {
    title: log.title ? `Blend: ${log.title}` : "Blend",
    question: `How much of each sand makes ${wanted}, and how surely?`,
    answer: answer(report),
    sections: [
      cautions,
      grainData(sieved, sievedUnits(log)),
      blendResult(report, log.units ?? "metric"),
      {
        role: "findings",
        title: "What the figures say",
        blocks: findings.map((finding) => ({ kind: "finding", finding })),
      },
      {
        role: "next",
        title: "What to do next",
        blocks: [{ kind: "list", items: blendNext(report) }],
      },
    ],
    sources: [
      ...new Set([
        "Multipliers of the grain fineness number: Univ. Técnica Estatal de Quevedo task sheets 2019; 3 to 200 also in a foundry entry citing GB/T 9442",
        ...findings.flatMap(({ source }) => (source ? [source] : [])),
      ]),
    ],
    issues: sieved.flatMap(({ issues }) => issues),
    figures: plainFigures(report),
  };
}

function answer(report: BlendReport): Text[] {
  const { outside, target, reach } = report;
  if (outside) {
    const [low, high] = [reach.low, reach.high].map((number) => number.toFixed(1));
    return [
      `No blend of these sands reaches it: they span ${low} to ${high}, and a ${outside} sand is needed.`,
    ];
  }
  const number = `Its grain fineness number is ${blendNumberText(report)} (95 % interval, from the sievings).`;
  const like = target.kind === "curve" ? `, nearest to ${target.report.sand.name}` : "";
  return [[{ strong: blendText(report) }, ` by dry mass${like}.`], number];
}

/** Why there is no blend, and what to write. */
function without(log: Log, why: NoBlend): PageSpec {
  const says: { readonly [why in NoBlend]: string } = {
    "no blend":
      "This log asks for no blend: write one under blend, with the sands it may be of and what it is to be.",
    "too few sands":
      "Fewer than two of the blend's sands have a fineness that can be relied on, so nothing can be worked out.",
    "no aim": "The blend has no aim: write to with a gfn, a band or a sand that it is to be like.",
    "no bond": "A usual range goes with a metal and a bond: write bond as bentonite or natural.",
    "no band": "No usual range of fineness is known here for this metal and bond: give a number instead.",
    "no curve":
      "The wanted curve cannot be had: that sand has no sieving to rely on, or its stack has fewer than two sieves in common with the others.",
  };
  const sieved = sandReports(log);
  return {
    question: "How much of each sand makes the wanted blend?",
    answer: [says[why]],
    sections: [
      cautions,
      ...(sieved.length > 0 ? [grainData(sieved, sievedUnits(log))] : []),
      { role: "next", title: "What to do next", blocks: [{ kind: "list", items: [says[why]] }] },
    ],
  };
}

function plainFigures({ sands, number, cost, fines, screens, outside, atLeast }: BlendReport) {
  return {
    shares: Object.fromEntries(
      sands.map(({ report, share, low, high, mayBeNought }) => [
        report.sand.name,
        { value: 100 * share, low: 100 * low, high: 100 * high, mayBeNought },
      ]),
    ),
    grainFinenessNumber: { value: number.value, low: number.low, high: number.high, atLeast },
    costPerKg: cost ?? null,
    finesPercent: fines?.percent ?? null,
    screens: screens?.count ?? null,
    outside: outside ?? null,
  };
}
