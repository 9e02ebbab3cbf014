// How long is enough to mull, by hand or by machine, and what does the muller come to?

import {
  type Log,
  type MullingReport,
  minutesText,
  mullingCautions,
  mullingData,
  mullingFindings,
  mullingNext,
  mullingReport,
  mullingResult,
  notebook,
  strengthText,
  type Text,
} from "../lib/index.ts";

export default notebook(
  "Mulling trial",
  (log) => {
    const report = mullingReport(log);
    const system = log.units ?? "metric";
    const findings = mullingFindings(report, (of) => strengthText(of, system));
    return {
      title: log.title ? `Mulling trial: ${log.title}` : "Mulling trial",
      question:
        report.ways.length > 1
          ? "How long is enough to mull, and which way gets there sooner?"
          : "How long is enough to mull?",
      answer: answer(report),
      sections: [
        {
          role: "cautions",
          title: "Before the muller turns",
          blocks: mullingCautions(hazards(log, report)).map((caution) => ({ kind: "caution", caution })),
        },
        mullingData(report, system),
        mullingResult(report, system),
        {
          role: "findings",
          title: "What the figures say",
          blocks: findings.map((finding) => ({ kind: "finding", finding })),
        },
        { role: "next", title: "What to do next", blocks: [{ kind: "list", items: mullingNext(report) }] },
      ],
      sources: [...new Set(findings.flatMap(({ source }) => (source ? [source] : [])))],
      figures: Object.fromEntries(report.ways.map((way) => [way.trial.name, plainFigures(way)])),
    };
  },
  { question: "How long is enough to mull, by hand or by machine, and what does the muller come to?" },
);

function hazards(log: Log, { ways, muller }: MullingReport) {
  const machine = log.muller !== undefined || ways.some(({ trial }) => !/\bhand\b/i.test(trial.name));
  return { machine, trials: ways.length > 0, ...(muller.heat ? { heat: muller.heat } : {}) };
}

function answer({ ways, muller }: MullingReport): Text[] {
  if (ways.length === 0)
    return [
      muller.rpm
        ? "The muller's arithmetic stands below; no mulling trial is in this log, so no time can be given."
        : "This log has no mulling trial: write one under mulling, and its time is worked out here.",
    ];
  return ways.slice(0, 3).map(({ trial, curve, times }): Text => {
    const time = times.at(-1);
    if (!curve || !time) return `${trial.name}: too few readings for a time.`;
    if (curve.straight)
      return `${trial.name}: strength was still rising as fast as ever, so no time can be given.`;
    return [
      { strong: `${trial.name}: ${minutesText(time)}` },
      ` until ${time.sharePercent} % of full bond (95 % interval).`,
    ];
  });
}

function plainFigures({ curve, times, fullBond }: MullingReport["ways"][number]): unknown {
  const ends = ({ value, low, high }: { value: number; low: number; high: number }) => ({ value, low, high });
  return {
    fullBondKPa: fullBond ? ends(fullBond) : null,
    minutesTo: Object.fromEntries(times.map((time) => [`${time.sharePercent} %`, ends(time)])),
    tauMin: curve?.tauMin ?? null,
    scatterKPa: curve?.scatterKPa ?? null,
  };
}
