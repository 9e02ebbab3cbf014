// Faults of castings beside the sand and the pour of their day: what goes together, and how little that proves.

import {
  type Block,
  castingCauses,
  castingCautions,
  castingData,
  castingFindings,
  castingPrintIn,
  castingQuestions,
  type FaultsAndSand,
  type Finding,
  faultsAndSand,
  findingBlocks,
  metalCautions,
  notebook,
  shownUnits,
  type Text,
} from "../lib/index.ts";

export default notebook(
  "Castings",
  (log) => {
    const report = faultsAndSand(log);
    const units = shownUnits(log);
    const findings = castingFindings(report, log, castingPrintIn(units));
    return {
      title: log.title ? `Castings: ${log.title}` : "Castings",
      question: "Which faults came with which sand and which pour, and how much does that tell?",
      answer: answer(report, findings),
      sections: [
        {
          role: "cautions",
          title: "Before you fettle, and before you pour again",
          blocks: [...castingCautions, ...metalCautions(log)].map(
            (caution): Block => ({ kind: "caution", caution }),
          ),
        },
        castingData(report, units),
        castingQuestions(report, units),
        castingCauses(report, log, units),
        { role: "findings", title: "What the figures say", blocks: findingBlocks(findings) },
        { role: "next", title: "What to do next", blocks: [{ kind: "list", items: nextSteps(report) }] },
      ],
      sources: [...new Set(findings.flatMap(({ source }) => source?.split("; ") ?? []))],
      issues: report.diary.issues,
      figures: figuresOf(report),
    };
  },
  { question: "Which faults of castings came with which sand and which pour, and how much does that tell?" },
);

function answer({ pours, faults, adjusted }: FaultsAndSand, findings: readonly Finding[]): Text[] {
  if (pours.length === 0)
    return ["The log holds no castings yet: write what was found on each, and `none` where nothing was."];
  const castings = pours.reduce((sum, pour) => sum + pour.castings.length, 0);
  const counted = `${castings} ${castings === 1 ? "casting" : "castings"} of ${pours.length} ${pours.length === 1 ? "pour" : "pours"}`;
  const most = findings.find(({ code }) => code === "casting/fault");
  const asked = findings.filter(({ code }) => code === "casting/ranked" || code === "casting/sided");
  const first = asked.find(({ tone }) => tone === "doubt") ?? asked[0];
  return [
    [{ strong: `${counted}. ` }, faults.length === 0 ? "No fault is written down." : most!.text],
    ...(first ? [first.text] : []),
    ...(first && adjusted.every((p) => p === undefined || p > 0.05) ? [notTold(asked.length)] : []),
    `So few pours prove little: what goes together here says where to look, and no figure on this page names a cause.`,
  ];
}

function notTold(questions: number): string {
  return questions === 1
    ? "That is not told from chance."
    : "Beside each other, none of the questions is told from chance.";
}

function nextSteps({ pours, faults, questions, answers }: FaultsAndSand): Text[] {
  if (pours.length === 0)
    return ["Look each casting over before it is fettled, and write its faults or `none` with the date."];
  const stale = answers.some(({ leftOut }) => leftOut.stale.length > 0 || leftOut.unmeasured.length > 0);
  return [
    ...(faults.length > 0
      ? ["Put right what comes first outside the sand: dry charge and tools, temperature, gates and vents."]
      : []),
    ...(faults.length > 0
      ? [
          "Change one thing at a time, and leave it for several pours; what changes together cannot be told apart.",
        ]
      : []),
    ...(stale
      ? ["Test the sand on the day that it is moulded in: an older test does not count for a pour."]
      : []),
    ...(questions.length === 0
      ? [
          "Name the pairs that you expect before the next pours, few of them: each more makes all of them weaker.",
        ]
      : [
          "Keep the questions as they stand for the next pours; what comes to mind now is asked of those alone.",
        ]),
    "Write sound castings down as carefully as bad ones: without them nothing can be held against anything.",
  ];
}

function figuresOf({ faults, answers, adjusted }: FaultsAndSand) {
  return {
    faults: faults.map(({ fault, withIt, without, share }) => ({
      fault,
      pours: withIt.length,
      of: withIt.length + without.length,
      sharePercent: { value: 100 * share.share, low: 100 * share.low, high: 100 * share.high },
    })),
    questions: answers.map(({ question: { fault, against, limit }, result, unit }, i) => ({
      fault,
      against,
      ...(limit ? { limit: limit.value } : {}),
      unit,
      ...(result.kind === "none"
        ? { without: result.why }
        : { p: result.p, pBesideOthers: adjusted[i], leastP: result.least }),
      ...(result.kind === "rank" ? { difference: { value: result.shift, ...result.interval } } : {}),
    })),
  };
}
