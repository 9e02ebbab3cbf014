// Is the heap in hand: which of its figures are steady, which have moved, and which test is due?

import {
  type Block,
  type ControlReport,
  controlReport,
  diaryAnswer,
  diaryCautions,
  diaryData,
  diaryFindingBlocks,
  diaryFindings,
  diaryPrintIn,
  diaryResult,
  type Finding,
  notebook,
  shownUnits,
  signalSources,
  type Text,
} from "../lib/index.ts";

export default notebook(
  "Diary",
  (log) => {
    const report = controlReport(log);
    const units = shownUnits(log);
    const findings = diaryFindings(report, diaryPrintIn(units));
    return {
      title: log.title ? `Diary: ${log.title}` : "Diary",
      question: "Which figures of the heap are steady, which have moved, and which test is due?",
      answer: diaryAnswer(report, findings),
      sections: [
        {
          role: "cautions",
          title: "Before you test",
          blocks: diaryCautions(report).map((caution): Block => ({ kind: "caution", caution })),
        },
        diaryData(report, units),
        diaryResult(report, units),
        { role: "findings", title: "What the figures say", blocks: diaryFindingBlocks(findings) },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(report, findings) }],
        },
      ],
      sources: [
        ...new Set(findings.flatMap(({ source }) => source ?? [])),
        ...(report.controlled.length > 0 ? [signalSources] : []),
      ],
      issues: report.diary.issues,
      figures: Object.fromEntries(report.controlled.map(plain)),
    };
  },
  { question: "Is the heap in hand: what is steady, what has moved, which test is due?" },
);

const plain = ({ series, chart, doubt, verdict, baseline, values }: ControlReport["controlled"][number]) => [
  `${series.property}${series.method === undefined ? "" : `, ${series.method}`}`,
  {
    unit: series.unit,
    verdict,
    values: values.length,
    baseline,
    mean: { value: chart.mean, low: chart.mean - doubt.mean, high: chart.mean + doubt.mean },
    lower: { value: chart.lower, low: chart.lower - doubt.limit, high: chart.lower + doubt.limit },
    upper: { value: chart.upper, low: chart.upper - doubt.limit, high: chart.upper + doubt.limit },
  },
];

const names = (all: readonly { readonly property: string }[]): string =>
  listed([...new Set(all.map(({ property }) => property))]);

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

function nextSteps({ controlled, few, due }: ControlReport, findings: readonly Finding[]): Text[] {
  const has = (code: string): boolean => findings.some((finding) => finding.code === code);
  const steps: Text[] = [];
  const signals = controlled.filter(({ verdict }) =>
    ["moved", "perhaps moved", "unsteady"].includes(verdict),
  );
  if (signals.length > 0 || has("diary/change-suggested"))
    steps.push(
      `Test ${signals.length > 0 ? names(signals.map(({ series }) => series)) : "what may have changed"} once more, from a fresh sample on another day, before anything is added to the heap.`,
      "Then look at what else changed in those days: bag, weather, rig, who tested. Change one thing at a time.",
    );
  if (due.length > 0) steps.push(`Test what is due: ${names(due)}.`);
  if (findings.some(({ code, tone }) => code === "diary/rig-share" && tone === "doubt"))
    steps.push("Where measuring is most of what moves, test twice a day and write both down.");
  if (controlled.length === 0)
    steps.push("Test on the same weekday, by one method and one rig, until there are eight values.");
  else if (few.length > 0) steps.push(`Go on until there are eight values by one method: ${names(few)}.`);
  if (steps.length === 0) steps.push("Go on as before, and write down each rebond, new bag and odd day.");
  return steps;
}
