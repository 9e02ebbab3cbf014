// Decides what is worth saying of one sand.

import type { Phrase } from "../phrase.ts";
import type { Source } from "../quantity/source.ts";
import { type Band, decides } from "../sand/band.ts";
import { afsClasses } from "../sand/multipliers.ts";
import { countWord } from "./count-word.ts";
import type { Finding } from "./finding.ts";
import * as say from "./grain-messages.ts";
import type { SandReport } from "./sand-report.ts";
import { taggedSource } from "./tagged-source.ts";

const one = (value: number): string => value.toFixed(1);

/**
 * Findings of one sand, the gravest first. bands: the usual ranges for its metal and bond.
 * @example
 * sandFindings(sandReports(log)[0]!, bands({ metal: "aluminium", bond: "bentonite" })).map(({ text }) => text)
 */
export function sandFindings(report: SandReport, bands: readonly Band[]): readonly Finding[] {
  return gravestFirst([
    ...foundation(report),
    ...standing(report, bands),
    ...doubts(report),
    ...grains(report),
  ]);
}

export function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  const order = ["error", "doubt", "good", "note"];
  return [...findings].sort((a, b) => order.indexOf(a.tone) - order.indexOf(b.tone));
}

/**
 * The figure with its ±, or what is possible.
 * @example sandReports(log).map(figureText)
 */
export function figureText({ printed, possible }: SandReport): string {
  return printed?.text ?? `${one(possible.low)} to ${one(possible.high)}`;
}

/** May there be a figure at all? */
function foundation(report: SandReport): Finding[] {
  const { sand, printed, possible, trusted, sievings, issues } = report;
  const found: Finding[] = [];
  if (!trusted) {
    const { kind, washing } = clayOn(report);
    found.push(say.unwashed(sand.name, figureText(report), kind, washing));
  }
  if (!printed) {
    found.push(say.cannotEstimate(sand.name, one(possible.low), one(possible.high), moreSieves(report)));
  }
  const deep =
    issues.find(({ code }) => code === "sand/sieve-overloaded") ??
    issues.find(({ code }) => code === "sand/sieve-crowded");
  if (deep) found.push(say.crowded([{ sand: sand.name, message: deep.message }]));
  if (trusted && sand.state === "new" && sievings.some(({ washed }) => washed !== true)) {
    found.push(say.notWashedNew([sand.name]));
  }
  return found;
}

function clayOn({ sand, sievings }: SandReport): say.ClayOn {
  return {
    kind: sand.state === "new" ? "natural" : sand.stateSaid ? "used" : "not said to be new",
    washing: sievings.some(({ washed }) => washed === false) ? "not washed" : "not said",
  };
}

/** Which sieves would make a number possible. */
function moreSieves({ fineness }: SandReport): string {
  const fullest = [...fineness.stacks[0]!.gaps].sort((a, b) => b.share - a.share)[0]!;
  const inside = fullest.cutsMm.map((mm) => afsClasses.find(({ openingMm }) => openingMm === mm)!.label);
  const share = (100 * fullest.share).toFixed(0);
  if (fullest.place === "pan")
    return `${share} % fell into the pan: sieves finer than the finest one are needed, such as ${inside[0] ?? "No. 270"}.`;
  if (fullest.place === "top")
    return `${share} % stayed on the top sieve: a coarser one is needed, such as ${inside.at(-1) ?? "No. 6"}.`;
  return `${share} % stayed on ${fullest.fraction.label}: ${inside.join(" or ")} would part it.`;
}

/** Where does it stand against the usual ranges? Ranges that cannot decide alone are told in one sentence. */
function standing(report: SandReport, bands: readonly Band[]): Finding[] {
  const { printed, trusted } = report;
  if (!printed || !trusted) return [];
  const recommended = bands.filter(({ claim }) => claim === "recommended");
  const deciding = recommended.filter(decides).map((band) => [band]);
  const hints = new Map<string, Band[]>();
  for (const band of recommended.filter((one) => !decides(one))) {
    // An edge within the ± is told range by range.
    const side = sideOf(report, band) === "across" ? `across ${band.low} ${band.high}` : sideOf(report, band);
    hints.set(side, [...(hints.get(side) ?? []), band]);
  }
  return [...deciding, ...hints.values()].map((together) => standingOf(report, together));
}

function sourceOf({ source, tag }: Band): string {
  return taggedSource(source, tag);
}

type Side = "inside" | "finer" | "coarser" | "across";

function sideOf({ fineness }: SandReport, band: Band): Side {
  const { low, high } = fineness.figure;
  if (low > band.high) return "finer";
  if (high < band.low) return "coarser";
  return low >= band.low && high <= band.high ? "inside" : "across";
}

function standingOf(report: SandReport, together: readonly Band[]): Finding {
  const { sand, fineness } = report;
  const [first] = together as readonly [Band];
  const side = sideOf(report, first);
  const figures = [{ sand: sand.name, figure: report.printed!.text }];
  const words = bandWords(together);
  const source = together.map(sourceOf).join("; ");
  if (side === "inside") return say.insideBand(figures, words, decides(first), source);
  if (side === "across") {
    const edge = fineness.figure.low < first.low ? first.low : first.high;
    return say.acrossBand(figures, String(edge), words, decides(first), source);
  }
  return say.outsideBand(figures, side, words, decides(first), source);
}

/** "70 to 130 (our own) and 60 to 110 (common practice), usual for aluminium in bentonite sand" */
function bandWords(together: readonly Band[]): string {
  const ranges = together.map(({ low, high, practice, tag }) => {
    return `${low} to ${high} (${[practice, tag === "read" ? "" : tag].filter((word) => word).join(", ")})`.replace(
      " ()",
      "",
    );
  });
  const { metal, bond } = together[0]!;
  return `${ranges.join(" and ")}, given for ${metal} in ${bond} sand`;
}

/** What is in the ±, what is not, and what would narrow it. */
function doubts(report: SandReport): Finding[] {
  const { sand, printed, fineness, nextSieves, sievings, trusted } = report;
  const found = balances(report);
  if (!printed || !trusted) return found;
  const { missing, scatter, figure } = fineness;
  if (missing.includes("repeats")) found.push(say.unrepeated([sand.name]));
  if (missing.includes("weighing")) found.push(say.weighingUnknown([sand.name]));
  if (missing.includes("scale")) found.push(say.scaleUnchecked([sand.name]));
  if (scatter && !scatter.pooled && missing.includes("grabs")) {
    found.push(say.grabsUnknown(sand.name, scatter.sd.toPrecision(2)));
  }
  if (scatter && !scatter.pooled && missing.length === 0) {
    found.push(say.repeatsAgree(sand.name, scatter.sd.toPrecision(2), String(sievings.length)));
  }
  const [first] = figure.shares;
  if (first && first.percent >= worthTelling) {
    const carrier = first.source.says ?? first.id;
    found.push(
      say.doubtCarrier(
        [{ sand: sand.name, percent: first.percent.toFixed(0) }],
        carrier,
        remedyFor(first.source),
      ),
    );
  }
  const [best] = nextSieves;
  if (best && worthBuying(report)) {
    const now = (figure.high - figure.low) / 2;
    found.push(say.sieveWouldNarrow(sand.name, best.label, now.toFixed(1), halfWith(report).toFixed(1)));
  }
  return found;
}

/** A source that brings at least this share of the variance is named, %. */
const worthTelling = 20;

/** The largest loss, or gain, that the scale does not explain. */
function balances({ sand, balances: all }: SandReport): Finding[] {
  const off = all
    .filter(({ balance }) => balance.verdict !== "good" && balance.withinScale !== true)
    .sort((a, b) => Math.abs(b.balance.lossPercent) - Math.abs(a.balance.lossPercent))[0];
  if (!off) return [];
  const { lossPercent, verdict } = off.balance;
  const portion = all.length > 1 && off.sieving.portion ? `, portion ${off.sieving.portion},` : "";
  const percent = Math.abs(lossPercent).toFixed(2);
  return lossPercent > 0
    ? [say.massMissing(sand.name, portion, percent, verdict === "look")]
    : [say.massAdded(sand.name, portion, percent)];
}

/** Half-width of the number's interval with the best missing sieve added: only the part between the sieves changes. */
function halfWith({ nextSieves: [best], fineness: { figure } }: SandReport): number {
  const now = (figure.high - figure.low) / 2;
  return Math.sqrt(Math.max(0, now ** 2 - (best!.widthNow / 2) ** 2 + (best!.width / 2) ** 2));
}

/** A fineness number is told as a whole number (from memory): a ± below a half of one needs no further sieve. */
const fineEnough = 0.5;

/**
 * A missing sieve is worth naming where it would narrow the whole ± by a sixth, and the ± is a half or more.
 * @example sandReports(log).map(worthBuying)
 */
export function worthBuying(report: SandReport): boolean {
  const {
    nextSieves: [best],
    fineness: { figure },
    trusted,
    printed,
  } = report;
  if (!best || !trusted || !printed) return false;
  const now = (figure.high - figure.low) / 2;
  return now >= fineEnough && halfWith(report) < (5 / 6) * now;
}

function remedyFor({ kind, id }: Source): Phrase {
  return kind === "rig" && id?.startsWith("bias") ? say.scaleBiasShared() : say.doubtNarrowedBy(kind);
}

/** A sand of this number or finer has more than 2 % of fines by its nature. */
const finesExpectedFrom = 65;

/** How the grains are spread. */
function grains({ sand, screens, gaps, fines, fineness, trusted }: SandReport): Finding[] {
  if (!trusted) return [];
  const found: Finding[] = gaps.map(({ labels, coarse, fine }) =>
    say.gapIn(sand.name, labels.join(", "), coarse, fine),
  );
  if (screens.afs && screens.count > 0) {
    found.push(
      say.screensAre(
        [{ sand: sand.name, percent: screens.sharePercent.toFixed(0) }],
        countWord(screens.count),
        screens.labels.join(", "),
      ),
    );
  }
  const coarse = fineness.figure.value < finesExpectedFrom;
  if (fines.percent !== undefined && fines.percent > 2 && !fines.interpolated && trusted && coarse) {
    found.push(say.finesHigh(sand.name, fines.percent.toFixed(1)));
  }
  return found;
}
