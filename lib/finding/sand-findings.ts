// Decides what is worth saying of one sand.

import { type Band, decides } from "../sand/band.ts";
import type { Finding } from "./finding.ts";
import * as say from "./grain-messages.ts";
import type { SandReport } from "./sand-report.ts";

const one = (value: number): string => value.toFixed(1);

/** Findings of one sand, the gravest first. bands: the usual ranges for its metal and bond. */
export function sandFindings(report: SandReport, bands: readonly Band[]): readonly Finding[] {
  const order = ["error", "doubt", "good", "note"];
  return [...foundation(report), ...standing(report, bands), ...doubts(report), ...grains(report)].sort(
    (a, b) => order.indexOf(a.tone) - order.indexOf(b.tone),
  );
}

/** The figure with its ±, or what is possible. */
export function figureText({ printed, possible }: SandReport): string {
  return printed?.text ?? `${one(possible.low)} to ${one(possible.high)}`;
}

/** May there be a figure at all? */
function foundation(report: SandReport): Finding[] {
  const { sand, printed, possible, trusted, sievings } = report;
  const found: Finding[] = [];
  if (!trusted) found.push(say.unwashedUsed(sand.name, figureText(report)));
  if (!printed) found.push(say.cannotEstimate(sand.name, one(possible.low), one(possible.high)));
  if (sand.state === "new" && sievings.some(({ washed }) => washed !== true)) {
    found.push(say.notWashedNew(sand.name));
  }
  return found;
}

/** Where does it stand against the usual ranges? Ranges that cannot decide alone are told in one sentence. */
function standing(report: SandReport, bands: readonly Band[]): Finding[] {
  const { printed, trusted } = report;
  if (!printed || !trusted) return [];
  const recommended = bands.filter(({ claim }) => claim === "recommended");
  const deciding = recommended.filter(decides).map((band) => [band]);
  const hints = new Map<string, Band[]>();
  for (const band of recommended.filter((one) => !decides(one))) {
    const side = sideOf(report, band);
    hints.set(side, [...(hints.get(side) ?? []), band]);
  }
  return [...deciding, ...hints.values()].map((together) => standingOf(report, together));
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
  const figure = report.printed!.text;
  const words = bandWords(together);
  const source = together.map((band) => `${band.source} (${band.tag})`).join("; ");
  if (side === "inside") return say.insideBand(sand.name, figure, words, decides(first), source);
  if (side === "across") {
    const edge = fineness.figure.low < first.low ? first.low : first.high;
    return say.acrossBand(sand.name, figure, String(edge), words, source);
  }
  return say.outsideBand(sand.name, figure, side, words, decides(first), source);
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
  const { sand, printed, fineness, nextSieves, balances, sievings, trusted } = report;
  const found: Finding[] = [];
  const { missing, scatter } = fineness;
  if (missing.includes("repeats")) found.push(say.unrepeated(sand.name));
  if (missing.includes("weighing")) found.push(say.weighingUnknown(sand.name));
  if (scatter && !scatter.pooled && missing.includes("grabs")) {
    found.push(say.grabsUnknown(sand.name, scatter.sd.toPrecision(2)));
  }
  if (scatter && !scatter.pooled && missing.length === 0) {
    found.push(say.repeatsAgree(sand.name, scatter.sd.toPrecision(2), String(sievings.length)));
  }
  const lost = balances
    .map(({ balance }) => balance)
    .filter(({ verdict, withinScale }) => verdict !== "good" && withinScale !== true)
    .sort((a, b) => Math.abs(b.lossPercent) - Math.abs(a.lossPercent));
  if (lost[0])
    found.push(say.massMissing(sand.name, lost[0].lossPercent.toFixed(1), lost[0].verdict === "look"));
  if (!printed || !trusted) return found;
  const [first] = fineness.figure.shares;
  if (first && first.percent >= 20) {
    const carrier = first.source.says ?? first.id;
    found.push(say.doubtCarrier(sand.name, first.percent.toFixed(0), carrier, remedyFor(first.source.kind)));
  }
  const [best] = nextSieves;
  if (best && worthBuying(report)) {
    found.push(say.sieveWouldNarrow(sand.name, best.label, best.widthNow.toFixed(1), best.width.toFixed(1)));
  }
  return found;
}

/** A missing sieve is worth naming where the gaps carry a good part of the ±, and it would close a good part of them. */
export function worthBuying({ nextSieves: [best], fineness: { figure } }: SandReport): boolean {
  return (
    best !== undefined && best.width < 0.8 * best.widthNow && best.widthNow > 0.3 * (figure.high - figure.low)
  );
}

function remedyFor(kind: string): string {
  const remedies: { readonly [kind: string]: string } = {
    reading: "A scale with a finer step, or a larger portion sieved in parts, would narrow it.",
    rig: "All sievings on one set share this doubt, so it cancels when two sands are compared on that set.",
    method: "A lid, a brush and a second weighing of each sieve keep the loss small.",
    model: "A sieve between the two would narrow it.",
    repeat: "More repeats would narrow it.",
  };
  return remedies[kind]!;
}

/** How the grains are spread. */
function grains({ sand, screens, gaps, fines }: SandReport): Finding[] {
  const found: Finding[] = gaps.map(({ labels, coarse, fine }) =>
    say.gapIn(sand.name, labels.join(", "), coarse, fine),
  );
  if (screens.afs && screens.count > 0) {
    found.push(
      say.screensAre(
        sand.name,
        countWord(screens.count),
        screens.sharePercent.toFixed(0),
        screens.labels.join(", "),
      ),
    );
  }
  if (fines.percent !== undefined && !fines.interpolated && sand.state === "new") {
    found.push(say.finesAre(sand.name, fines.percent.toFixed(1), fines.percent > 2));
  }
  return found;
}

function countWord(count: number): string {
  return ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven"][count] ?? String(count);
}
