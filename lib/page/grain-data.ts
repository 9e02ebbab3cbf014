// What was sieved and how, as a section of a page.

import type { SandReport } from "../finding/sand-report.ts";
import type { Place } from "../issue.ts";
import { printNumber } from "../quantity/print.ts";
import { sheet } from "../sheet/sheet.ts";
import type { Block, Section, TableCell } from "./blocks.ts";
import { inShownUnit, shownUnit, type UnitSystem } from "./shown-units.ts";

/**
 * The sieve sets and scales, the sievings with their losses, and what each sieve held. system: what masses and the
 * width of the sieves are printed in; metric unless given (sievedUnits of a log tells).
 * @example grainData(sandReports(log)).title
 */
export function grainData(reports: readonly SandReport[], system: UnitSystem = "metric"): Section {
  const grams = shownUnit("g", system);
  const massed = { unit: grams, ...(grams === "g" ? {} : { dataUnit: "g" }) };
  const mass = (g: number): TableCell => ({
    ...number(inShownUnit(g, "g", system).value, grams === "g" ? 2 : 3),
    number: g,
  });
  const rows = reports.flatMap(({ sand, sievings, balances }) =>
    sievings.map((sieving): (string | TableCell)[] => {
      const loss = balances.find((one) => one.sieving === sieving)?.balance;
      const sum = sieving.retained.reduce((all, { mass }) => all + mass.value, 0);
      return [
        sand.name,
        sieving.date ?? "",
        sieving.portion ?? "",
        sieving.washed === undefined ? "not said" : sieving.washed ? "yes" : "no",
        sieving.minutes === undefined ? "" : number(sieving.minutes, 0),
        sieving.startG ? { ...mass(sieving.startG.value), at: sieving.startG.place } : "",
        sieving.unit === "g" ? { ...mass(sum), at: sieving.place } : "",
        loss
          ? {
              ...number(lossPercent(sieving.startG!.value, sum), 1),
              ...(loss.verdict === "redo" ? { fault: "more than 1 %" } : {}),
            }
          : "",
      ];
    }),
  );
  const blocks: Block[] = [
    {
      kind: "prose",
      text: sievedWords(reports),
    },
    {
      kind: "list",
      items: [
        ...new Set(
          reports.flatMap(({ sievings }) => sievings.flatMap((sieving) => sievedWith(sieving, system))),
        ),
      ],
    },
    {
      kind: "table",
      name: "sievings",
      caption: "The sievings",
      columns: [
        { head: "Sand", align: "text" },
        { head: "Date", align: "text" },
        { head: "Portion", align: "text", spare: true },
        { head: "Washed", align: "text" },
        { head: "Shaken", unit: "min", align: "number", spare: true },
        { head: "Start", ...massed, align: "number", spare: true },
        { head: "Retained", ...massed, align: "number", spare: true },
        { head: "Loss", unit: "% of start", align: "number", formula: lossFormula, spare: true },
      ],
      rows,
    },
    sharesTable(reports),
  ];
  return { role: "data", title: "What was sieved, and how", blocks };
}

const divisor = "Figures divide by the sum retained, the pan included.";
const short = (value: number): string => String(Number(value.toPrecision(3)));

function sievedWords(reports: readonly SandReport[]): string {
  const units = new Set(reports.flatMap(({ sievings }) => sievings.map(({ unit }) => unit)));
  if (reports.length === 0) return "What was sieved is in the log; nothing of it can be worked out yet.";
  if (units.size === 1 && units.has("percent"))
    return `The shares are given in percent; how they were found is not said. ${divisor}`;
  return `The sand was sieved; what every sieve and the pan held was weighed. ${divisor}`;
}

/** The sieve set and the scale, a line each. */
function sievedWith({ set, scale }: SandReport["sievings"][number], system: UnitSystem): string[] {
  const shown = (value: number, unit: "g" | "mm"): string => {
    const one = inShownUnit(value, unit, system);
    return `${short(one.value)} ${one.unit}`;
  };
  const frame = set?.frameMm === undefined ? "" : `, ${shown(set.frameMm, "mm")} wide`;
  const checked = set?.checked
    ? "compared with a certified set, so taken to a third of the standard's tolerance (our own)"
    : "taken to lie anywhere within the standard's tolerance";
  const within =
    scale?.withinG === undefined
      ? "never checked with known weights"
      : `within ${shown(scale.withinG, "g")} of known weights`;
  return [
    `Sieves: ${set ? `${set.name}${frame}` : "the set is not named in the log"}; openings ${checked}.`,
    scale
      ? `Scale: ${scale.name}, reads to ${shown(scale.stepG, "g")}, ${within}.`
      : "Scale: not named in the log.",
  ];
}

function sharesTable(reports: readonly SandReport[]): Block {
  const openings = [
    ...new Set(reports.flatMap(({ grading }) => grading.fractions.map(({ openingMm }) => openingMm))),
  ];
  openings.sort((a, b) => b - a);
  const fractionAt = ({ grading }: SandReport, mm: number) =>
    grading.fractions.find(({ openingMm }) => openingMm === mm);
  const shares = new Map(reports.map((report) => [report, sharesOf(report)]));
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
        formula: shareFormula,
        source:
          "held: on each sieve and in the pan, g; the mean of the portions' percent where there are several",
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
          if (!fraction) return "";
          const share = number(shares.get(report)![report.grading.fractions.indexOf(fraction)]!, 1);
          const at = heldAt(report, fraction.label);
          return at ? { ...share, at } : share;
        }),
      ];
    }),
  };
}

/** Where what the sieve held was written, if the sand was sieved once. */
function heldAt({ sievings }: SandReport, label: string): Place | undefined {
  if (sievings.length !== 1) return undefined;
  return sievings[0]!.retained.find((entry) => entry.label === label)?.mass.place;
}

/** In the names of the table's columns: the formula that is shown is the one that is run. */
const lossFormula = "percentOf(Start - Retained, Start)";
/** held: what a sieve or the pan held. */
export const shareFormula = "percentOf(held, sum(held))";

function lossPercent(startG: number, retainedG: number): number {
  const made = sheet({
    columns: { Start: "g", Retained: "g", Loss: { unit: "% of start", formula: lossFormula } },
    rows: [{ Start: startG, Retained: retainedG }],
  });
  return made.column("Loss").values[0]!;
}

function sharesOf({ grading }: SandReport): Float64Array {
  const made = sheet({
    columns: { held: "number", share: { unit: "% of sum retained", formula: shareFormula } },
    rows: grading.fractions.map(({ mass }) => ({ held: mass })),
  });
  return made.column("share").values;
}

function number(value: number, decimals: number): TableCell {
  return { text: printNumber(value, decimals), number: value };
}
