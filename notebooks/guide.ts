// Where does this log stand on the way from an empty yard to a write-up, and what is the next step?

import {
  type Block,
  type GuideReport,
  guideReport,
  guideStage,
  guideStageDone,
  guideStageTold,
  guideTable,
  notebook,
  type Text,
} from "../lib/index.ts";

export default notebook(
  "Guide",
  (log) => {
    const report = guideReport(log);
    const { standings, next } = report;
    const cautions = (next ?? standings.at(-1)!).stage.cautions;
    return {
      title: log.title ? `Guide: ${log.title}` : "Guide",
      question: "Where does this log stand on the way from an empty yard to a write-up, and what comes next?",
      answer: answer(report),
      sections: [
        {
          role: "cautions",
          title: next ? "Before the next step" : "Before you go on",
          blocks: cautions.map((caution): Block => ({ kind: "caution", caution })),
        },
        ...(next
          ? [
              {
                role: "data" as const,
                title: `The next step: ${next.stage.title}`,
                blocks: [...guideStageTold(next), ...guideStageDone(next.stage, log.file)],
              },
            ]
          : []),
        { role: "result", title: "The whole way", blocks: [guideTable(standings)] },
        ...standings.filter((one) => one !== next).map((one) => guideStage(one, log.file)),
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(report) }],
        },
      ],
      figures: {
        next: next?.stage.name,
        stages: Object.fromEntries(standings.map(({ stage, state }) => [stage.name, state])),
      },
    };
  },
  { question: "Where am I on the way from an empty yard to a write-up, and what is the next step?" },
);

function answer({ standings, next }: GuideReport): Text[] {
  const count = standings.filter(({ state }) => state === "on record").length;
  const stands = `${count} of ${standings.length} stages ${count === 1 ? "is" : "are"} on record.`;
  if (!next) return [[{ strong: stands }, " The diary and the next question go on from here."]];
  return [
    [{ strong: `Next: ${next.stage.title.toLowerCase()}. ` }, next.stage.purpose],
    `${stands}${next.state === "begun" ? ` This one is begun. ${next.lacks.map(String).join(" ")}` : ""}`,
  ];
}

function nextSteps({ standings, next }: GuideReport): Text[] {
  if (!next) {
    return [
      "Test on the same weekday, and look at the diary of this log.",
      "Ask the next question, and write it up as the last one.",
    ];
  }
  const later = standings.slice(standings.indexOf(next) + 1).find(({ state }) => state !== "on record");
  return [
    `Print: ${next.stage.cards.map((card) => `mullbook card ${card}`).join(", ")}.`,
    "Do it, write down what was read, and check the log before the sand is thrown away.",
    ...(later ? [`After that: ${later.stage.title.toLowerCase()}.`] : []),
  ];
}
