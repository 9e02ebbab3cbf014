// What mends the heap today, what water it wants for tomorrow, what pours do to its clay, and what a season takes.

import {
  type Block,
  findingBlocks,
  type HeapReport,
  heapCautions,
  heapData,
  heapFindings,
  heapReport,
  heapSeasonSection,
  heatAndBurnOut,
  heatFindings,
  type Log,
  notebook,
  type Section,
  shownUnits,
  type Text,
  waterForTomorrow,
  weatherFindings,
} from "../lib/index.ts";

export default notebook(
  "Heap",
  (log) => {
    const report = heapReport(log);
    const units = shownUnits(log);
    const findings = heapFindings(report, units.recipe);
    const [mend, ...others] = findings;
    const sources = [...findings, ...heatFindings(log, units), ...weatherFindings(log, units)];
    const today = findings.filter(({ code }) =>
      /^heap\/(mend|at-once|throw|too-wet|sand|new-sand|live-clay)/.test(code),
    );
    const season = findings.filter((finding) => !today.includes(finding));
    return {
      title: log.title ? `Heap: ${log.title}` : "Heap",
      question: "What does the heap want today and tomorrow, and what does the season take?",
      answer: answer(
        [mend, ...others].flatMap((finding) => finding?.text ?? []),
        log,
      ),
      sections: [
        {
          role: "cautions",
          title: "Before you work the heap",
          blocks: heapCautions(log).map((caution): Block => ({ kind: "caution", caution })),
        },
        heapData(report, log, units),
        part("The heap today", findingBlocks(today)),
        detailOnScreen(waterForTomorrow(log, units)),
        detailOnScreen(heatAndBurnOut(log, units)),
        heapSeasonSection(report, log, units),
        { role: "findings", title: "What the season takes", blocks: findingBlocks(season) },
        { role: "next", title: "What to do next", blocks: [{ kind: "list", items: nextSteps(report, log) }] },
      ],
      sources: [...new Set(sources.flatMap(({ source }) => source ?? []))],
      figures: figuresOf(report),
    };
  },
  { question: "What does the heap want today and tomorrow, and what does a season of pours take?" },
);

const part = (title: string, blocks: readonly Block[]): Section => ({ role: "result", title, blocks });

/** What a section folds away stays off the paper, and so does a drawing of what its table says. */
function detailOnScreen(section: Section): Section {
  const { blocks } = section;
  const tabled = blocks.some(({ kind }) => kind === "table");
  return {
    ...section,
    blocks: blocks.map((block) =>
      block.kind === "fold" || (block.kind === "chart" && tabled) ? { ...block, screenOnly: true } : block,
    ),
  };
}

function answer(texts: readonly string[], { events }: Log): Text[] {
  const [first, ...more] = texts;
  if (first === undefined)
    return [
      events.length > 0
        ? "The log says too little of the heap: write its mass, its moisture and what is wanted."
        : "The log says nothing of a heap: write heap, measured, wanted and events, and the figures follow.",
    ];
  const told = more.filter((text) => /burnt sand|more pours|next pour|has not moved/.test(text)).slice(0, 2);
  return [[{ strong: first }], ...told];
}

function nextSteps({ burnOut, mending, season }: HeapReport, { planned, units, weather }: Log): Text[] {
  return [
    ...(mending
      ? [
          "Put in the first part, mull it, let it stand, and test moisture and compactability before the rest.",
        ]
      : []),
    ...(mending ? [] : ["Measure moisture and live clay of the heap, and write what is wanted of them."]),
    ...(burnOut && !burnOut.moved
      ? [
          "Test strength and compactability after every other pour, at one compactability: its course tells your burn-out.",
        ]
      : []),
    ...(burnOut
      ? ["Weigh what you sweep up and throw out, and write it: sand lost is what new sand makes up for."]
      : []),
    ...(season || planned
      ? []
      : [
          `Write planned: { pours: 30, metal: ${units === "US" ? "5.5 lb" : "2.5 kg"} }, and the season follows.`,
        ]),
    ...(weather
      ? []
      : ["Cover the heap; it loses little under a sheet, and a damp floor under it is a hazard."]),
  ];
}

function figuresOf({ burnOut, mending, season }: HeapReport) {
  const ends = ({ value, low, high }: { value: number; low: number; high: number }) => ({ value, low, high });
  return {
    ...(burnOut
      ? {
          burntSandKgPerKg: ends(burnOut.own),
          burntSandBefore: ends(burnOut.prior),
          recordMovedIt: burnOut.moved,
        }
      : {}),
    ...(mending
      ? { clayKg: ends(mending.clayKg), newSandKg: ends(mending.newSandKg), waterKg: ends(mending.waterKg) }
      : {}),
    ...(season
      ? {
          poursToRebond: ends(season.toFloor),
          clayKgPer1000: ends(season.whatIf[0]!.clayKg),
          newSandKgPer1000: ends(season.whatIf[0]!.newSandKg),
        }
      : {}),
  };
}
