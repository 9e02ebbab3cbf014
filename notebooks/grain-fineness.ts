// How fine is the sand, how sure is that, how are its grains spread, and what to do next?

import {
  type Band,
  type Block,
  type Bond,
  bands,
  type Chart,
  compareSands,
  doubtBars,
  dryingHeat,
  type Finding,
  figureText,
  grainCurve,
  type Issue,
  type KeyFigure,
  kurtosisClass,
  type Log,
  type Metal,
  metalNamed,
  noBand,
  notebook,
  numberStrip,
  printNumber,
  retainedBars,
  roughSizeUm,
  type SandComparison,
  type SandReport,
  type Section,
  sandFindings,
  sandReports,
  silicaDust,
  skewnessClass,
  sortingClass,
  type TableCell,
  type Text,
  worthBuying,
} from "../lib/index.ts";

export default notebook(
  "Grain fineness",
  (log) => {
    const reports = sandReports(log);
    const ranges = usualRanges(log);
    const comparisons = reports.slice(1).flatMap((second) => compareSands(reports[0]!, second) ?? []);
    const own = reports.map((report) => sandFindings(report, ranges));
    const findings = [...comparisons.map(({ finding }) => finding), ...own.flat(), ...rangeless(log, ranges)];
    return {
      title: log.title ? `Grain fineness: ${log.title}` : "Grain fineness",
      question:
        reports.length > 1
          ? "How fine are these sands, how sure is that, and are they one sand or another?"
          : "How fine is this sand, and how sure is that?",
      answer: answer(reports, comparisons),
      sections: [
        cautions(reports),
        data(reports),
        result(reports, ranges),
        { role: "findings", title: "What the figures say", blocks: findings.map(asBlock) },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: nextSteps(reports, findings) }],
        },
      ],
      sources: sources(findings),
      colophon: [
        `Log ${log.file}, fingerprint ${log.fingerprint}.`,
        ...(log.founder ? [`Kept by ${log.founder}.`] : []),
      ],
      issues: reports.flatMap((report): readonly Issue[] => report.issues),
      figures: Object.fromEntries(reports.map((report) => [report.sand.name, plainFigures(report)])),
    };
  },
  { question: "How fine is the sand, how sure is that, and how does it compare?" },
);

const asBlock = (finding: Finding): Block => ({ kind: "finding", finding });

/** The usual ranges for the log's metal and bond; none without both. */
function usualRanges({ metal, bond }: Log): readonly Band[] {
  const known = metal === undefined ? undefined : metalNamed(metal);
  return known && bond ? bands({ metal: known as Metal, bond: bond as Bond, property: "fineness" }) : [];
}

function rangeless({ metal, bond }: Log, ranges: readonly Band[]): Finding[] {
  return metal && bond && ranges.length === 0 ? [noBand(metal, bond)] : [];
}

function answer(reports: readonly SandReport[], comparisons: readonly SandComparison[]): Text[] {
  if (reports.length === 0) return ["No sieving in this log can be worked out: see below what went wrong."];
  const figures = reports.map((report): Text => {
    const { sand, trusted, printed } = report;
    if (!printed)
      return `${sand.name}: somewhere from ${figureText(report)}; too little was measured to say more.`;
    if (!trusted) return `${sand.name}: ${figureText(report)} with its clay on, which is no fineness number.`;
    return [{ strong: `${sand.name}: ${figureText(report)}` }, ` (grain fineness number, 95 % interval).`];
  });
  return [...figures, ...comparisons.map(({ finding }) => finding.text)];
}

function cautions(reports: readonly SandReport[]): Section {
  const washed = reports.some(({ sievings }) => sievings.some((sieving) => sieving.washed === true));
  const needed = washed ? [silicaDust, dryingHeat] : [silicaDust];
  return {
    role: "cautions",
    title: "Before you sieve",
    blocks: needed.map((caution) => ({ kind: "caution", caution })),
  };
}

function data(reports: readonly SandReport[]): Section {
  const rows = reports.flatMap(({ sand, sievings, balances }) =>
    sievings.map((sieving): (string | TableCell)[] => {
      const loss = balances.find((one) => one.sieving === sieving)?.balance;
      const sum = sieving.retained.reduce((all, { mass }) => all + mass.value, 0);
      return [
        sand.name,
        sieving.date ?? "",
        sieving.portion ?? "",
        sieving.washed === true ? "yes" : "no",
        sieving.minutes === undefined ? "" : number(sieving.minutes, 0),
        sieving.startG ? number(sieving.startG.value, 2) : "",
        sieving.unit === "g" ? number(sum, 2) : "",
        loss
          ? { ...number(loss.lossPercent, 1), ...(loss.verdict === "redo" ? { fault: "more than 1 %" } : {}) }
          : "",
      ];
    }),
  );
  const blocks: Block[] = [
    {
      kind: "prose",
      text: "The sand was sieved dry; what every sieve and the pan held was weighed. Figures divide by the sum retained, the pan included.",
    },
    { kind: "list", items: [...new Set(reports.flatMap(({ sievings }) => sievings.flatMap(rigWords)))] },
    {
      kind: "table",
      name: "sievings",
      caption: "The sievings",
      columns: [
        { head: "Sand", align: "text" },
        { head: "Date", align: "text" },
        { head: "Portion", align: "text" },
        { head: "Washed", align: "text" },
        { head: "Shaken", unit: "min", align: "number" },
        { head: "Start", unit: "g", align: "number" },
        { head: "Retained", unit: "g", align: "number" },
        { head: "Loss", unit: "% of start", align: "number" },
      ],
      rows,
    },
    sharesTable(reports),
  ];
  return { role: "data", title: "What was sieved, and how", blocks };
}

/** The sieve set and the scale, a line each. */
function rigWords({ set, scale }: SandReport["sievings"][number]): string[] {
  const frame = set?.frameMm === undefined ? "" : `, ${set.frameMm} mm wide`;
  const checked = set?.checked
    ? "compared with a certified set"
    : "not compared with a certified set, so taken to lie anywhere within the standard's tolerance";
  const within =
    scale?.withinG === undefined
      ? "never checked with known weights"
      : `within ${scale.withinG} g of known weights`;
  return [
    set ? `Sieves: ${set.name}${frame}; openings ${checked}.` : "Sieves: the set is not named in the log.",
    scale ? `Scale: ${scale.name}, reads to ${scale.stepG} g, ${within}.` : "Scale: not named in the log.",
  ];
}

function sharesTable(reports: readonly SandReport[]): Block {
  const openings = [
    ...new Set(reports.flatMap(({ grading }) => grading.fractions.map(({ openingMm }) => openingMm))),
  ];
  openings.sort((a, b) => b - a);
  const fractionAt = ({ grading }: SandReport, mm: number) =>
    grading.fractions.find(({ openingMm }) => openingMm === mm);
  return {
    kind: "table",
    name: "shares",
    caption: "What each sieve held (mean of a sand's portions where they were sieved on one stack)",
    columns: [
      { head: "Sieve", align: "text" },
      { head: "Opening", unit: "mm", align: "number" },
      ...reports.map(({ sand }) => ({
        head: sand.name,
        unit: "% of sum retained",
        align: "number" as const,
      })),
    ],
    rows: openings.map((mm) => {
      const label = reports
        .map((report) => fractionAt(report, mm)?.label)
        .find((found) => found !== undefined)!;
      return [
        label,
        mm === 0 ? "" : { text: String(Number(mm.toPrecision(3))), number: mm },
        ...reports.map((report) => {
          const fraction = fractionAt(report, mm);
          return fraction ? number((100 * fraction.mass) / report.grading.total, 1) : "";
        }),
      ];
    }),
  };
}

function result(reports: readonly SandReport[], ranges: readonly Band[]): Section {
  const blocks: Block[] = [{ kind: "figures", figures: reports.map(keyFigure) }];
  const drawn: Chart[] = [];
  const marked = reports.filter(({ printed, trusted }) => printed && trusted);
  if (marked.length > 0) drawn.push(strip(marked, ranges));
  if (reports.length > 0) drawn.push(curves(reports), bars(reports));
  marked.forEach(({ sand, fineness }, k) => {
    const shares = fineness.figure.shares
      .filter(({ percent }) => percent >= 1)
      .map(({ id, source, percent }) => ({ label: source.says ?? id, sharePercent: percent }));
    if (shares.length > 1) drawn.push(doubtBars({ name: `doubt-${k + 1}`, of: sand.name, shares }));
  });
  blocks.push(...drawn.map((chart): Block => ({ kind: "chart", chart })));
  for (const report of reports)
    blocks.push({ kind: "prose", text: grainSentence(report) }, furtherMeasures(report));
  return { role: "result", title: "How fine, and how spread", blocks };
}

function keyFigure(report: SandReport): KeyFigure {
  const { sand, printed, trusted, possible, fineness } = report;
  const open = possible.high - possible.low > 0.5;
  const within = open
    ? `By the masses alone ${possible.low.toFixed(0)} to ${possible.high.toFixed(0)}. `
    : "";
  const middle = printed?.form === "range" ? `Middle ${printed.value}. ` : "";
  const parts: { readonly [part: string]: string } = {
    weighing: "the weighings",
    repeats: "the scatter between sievings",
    grabs: "the scatter between grabs",
  };
  const without = fineness.missing.map((part) => parts[part]!);
  const missing = without.length > 0 ? `Without ${without.join(" and ")}.` : "";
  return {
    label: `${sand.name}, grain fineness number`,
    figure: printed ? printed.text : figureText(report),
    under: `${middle}${within}${missing}`.trim() || "95 % interval; nothing is known to be missing from it.",
    weak: !trusted || !printed,
  };
}

function strip(reports: readonly SandReport[], ranges: readonly Band[]): Chart {
  return numberStrip({
    name: "fineness-strip",
    title: "grain fineness number",
    unit: "",
    marks: reports.map((report) => ({
      label: report.sand.name,
      value: report.fineness.figure.value,
      low: report.fineness.figure.low,
      high: report.fineness.figure.high,
      possible: report.possible,
      figure: figureText(report),
    })),
    bands: ranges.map(({ low, high, metal, bond, practice, source, tag, claim }) => ({
      label: `${metal}, ${bond}${practice ? `, ${practice}` : ""}${claim === "worked" ? ", has served" : ""}`,
      low,
      high,
      source,
      tag,
    })),
  });
}

function curves(reports: readonly SandReport[]): Chart {
  const [only] = reports.length === 1 ? reports : [];
  const between = only ? possibleBetween(only) : [];
  return grainCurve({
    name: "grain-curve",
    sands: reports.map(({ sand, sieves }) => ({
      name: sand.name,
      ...(between.length > 0 ? { interval: between } : {}),
      points: sieves
        .filter(({ openingMm }) => openingMm > 0)
        .map(({ openingMm, label, passing }) => ({
          openingMm,
          label,
          passingPercent: passing.value,
          low: passing.low,
          high: passing.high,
        })),
    })),
    caption: `Share of the sand that passes each sieve, by mass, against the opening; straight lines join the sieves, upright bars are 95 %${between.length > 0 ? "; shaded, where the curve may run in truth between two sieves that others are missing from" : ""}.`,
  });
}

/** Where the curve may run between sieves that the fineness number has others between: nothing but the masses assumed. */
function possibleBetween({ fineness, curve }: SandReport) {
  return fineness.stacks[0]!.gaps.flatMap(({ cutsMm, share, upperMm, lowerMm }, k) => {
    const [above, below] = [curve.points[k - 1]?.passingPercent, curve.points[k]?.passingPercent];
    if (cutsMm.length === 0 || share < 0.02 || above === undefined || below === undefined) return [];
    return [
      { openingMm: upperMm, low: above, high: above },
      { openingMm: upperMm * 0.999, low: below, high: above },
      { openingMm: lowerMm * 1.001, low: below, high: above },
      { openingMm: lowerMm, low: below, high: below },
    ];
  });
}

function bars(reports: readonly SandReport[]): Chart {
  return retainedBars({
    name: "retained",
    sands: reports.map(({ sand, sieves }) => ({
      name: sand.name,
      bars: sieves.map(({ label, openingMm, retained }) => ({
        label,
        openingMm,
        percent: retained.value,
        low: Math.max(0, retained.low),
        high: retained.high,
      })),
    })),
  });
}

/** Grain measures as a sentence beside the curve. */
function grainSentence({ sand, statistics, uniformity, three, four, fineness, printed }: SandReport): string {
  const said = [
    statistics.d50Mm === undefined ? undefined : `half of it passes ${printNumber(statistics.d50Mm, 3)} mm`,
    statistics.uniformity === undefined
      ? undefined
      : `D60/D10 is ${printNumber(statistics.uniformity, 2)} (a moulding sand is narrow on purpose)`,
    uniformity.ggPercent === undefined
      ? undefined
      : `${printNumber(uniformity.ggPercent, 0)} % lies within a third of the middle size`,
    three ? `the best three neighbouring sieves hold ${printNumber(three.sharePercent, 0)} %` : undefined,
    four ? `the best four ${printNumber(four.sharePercent, 0)} %` : undefined,
  ].filter((part) => part !== undefined);
  const rough = printed ? roughSizeUm(fineness.figure.value).value : undefined;
  const size = rough
    ? ` By the handbooks' rough table its mean grain is about ${printNumber(rough.value, 0)} µm (${printNumber(rough.low, 0)} to ${printNumber(rough.high, 0)}).`
    : "";
  return said.length > 0
    ? `${sand.name}: ${said.join("; ")}.${size}`
    : `${sand.name}: too few sieves for grain measures.`;
}

function furtherMeasures({ sand, statistics, surface }: SandReport): Block {
  const { graphic, moment, d10Mm, d30Mm, d60Mm, d90Mm, curvature } = statistics;
  const mm = (value: number | undefined): string =>
    value === undefined ? "not reached" : `${printNumber(value, 3)} mm`;
  const items: string[] = [
    `D10 ${mm(d10Mm)}, D30 ${mm(d30Mm)}, D60 ${mm(d60Mm)}, D90 ${mm(d90Mm)}; curvature D30²/(D60·D10) ${curvature === undefined ? "not reached" : printNumber(curvature, 2)}.`,
  ];
  if (graphic.sortingPhi !== undefined && graphic.skewness !== undefined && graphic.kurtosis !== undefined) {
    items.push(
      `Folk and Ward: mean ${printNumber(graphic.meanPhi!, 2)} φ, sorting ${printNumber(graphic.sortingPhi, 2)} φ (${sortingClass(graphic.sortingPhi)}), skewness ${printNumber(graphic.skewness, 2)} (${skewnessClass(graphic.skewness)}), kurtosis ${printNumber(graphic.kurtosis, 2)} (${kurtosisClass(graphic.kurtosis)}).`,
    );
  } else items.push("Folk and Ward: the 5 or the 95 % point lies beyond the stack.");
  if (moment.meanPhi !== undefined && moment.sortingPhi !== undefined) {
    items.push(
      `Moments: mean ${printNumber(moment.meanPhi, 2)} φ, sorting ${printNumber(moment.sortingPhi, 2)} φ, with the pan's middle assumed.`,
    );
  }
  if (surface.cm2G !== undefined) {
    items.push(
      `Surface of spheres of these sizes: ${printNumber(surface.cm2G, 0)} cm²/g, ${printNumber(surface.panSharePercent ?? 0, 0)} % of it in the pan. Real grains have more.`,
    );
  }
  return { kind: "fold", summary: `Further measures of ${sand.name}`, blocks: [{ kind: "list", items }] };
}

function nextSteps(reports: readonly SandReport[], findings: readonly Finding[]): Text[] {
  const has = (code: string): boolean => findings.some((finding) => finding.code === code);
  const steps: Text[] = [];
  if (has("grain/unwashed-used"))
    steps.push("Wash the clay out of a portion, dry it, sieve it again, and write washed: yes.");
  if (has("grain/cannot-estimate")) steps.push("Add sieves until at least three hold sand.");
  if (has("grain/weighing-unknown")) steps.push("Declare the scale: its name and what it reads to.");
  for (const report of reports.filter(worthBuying)) {
    steps.push(`If you buy one sieve for ${report.sand.name}, buy ${report.nextSieves[0]!.label}.`);
  }
  if (has("grain/unrepeated"))
    steps.push("Sieve a second portion: riffle it from the same sample, or better take a fresh grab.");
  if (has("compare/apart-but-unrepeated")) steps.push("Sieve two fresh grabs from each bag on the same set.");
  if (has("grain/outside-band")) {
    steps.push(
      "A sand outside a usual range can still cast well: judge it by its skins and its blows before you change it, and blend in a finer or a coarser one in small trials.",
    );
  }
  if (has("grain/mass-balance"))
    steps.push("Look where sand escapes, and sieve again with a lid and a brush.");
  if (steps.length === 0)
    steps.push("Nothing here asks for another sieving. Next comes a moisture trial with this sand.");
  return [...new Set(steps)];
}

function sources(findings: readonly Finding[]): string[] {
  const always = [
    "Multipliers of the grain fineness number: Univ. Técnica Estatal de Quevedo task sheets 2019; 3 to 200 also in a foundry entry citing GB/T 9442",
    "Sieve openings and their tolerance: ASTM E11-17, ISO 3310-1:2016",
    "Five layers of grains on a sieve: McManus 1965, J. Sed. Petrol. 35(4) 792; mass balance and load by area: ASTM C136",
  ];
  return [...new Set([...always, ...findings.flatMap(({ source }) => (source ? [source] : []))])];
}

function plainFigures({ fineness, printed, possible, trusted, fines, statistics }: SandReport): unknown {
  const { value, low, high } = fineness.figure;
  return {
    grainFinenessNumber: printed
      ? { value, low, high, atLeast: fineness.missing.length > 0, printed: printed.text }
      : null,
    possible,
    trusted,
    finesPercent: fines.percent ?? null,
    d50Mm: statistics.d50Mm ?? null,
  };
}

function number(value: number, decimals: number): TableCell {
  return { text: printNumber(value, decimals), number: value };
}
