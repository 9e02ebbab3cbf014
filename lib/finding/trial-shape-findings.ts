// What each curve of a trial is, where it turns, and which batches do not belong to it.

import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Finding } from "./finding.ts";
import { capital, counted } from "./trial-aim-findings.ts";
import { axisUnit, placeText } from "./trial-axis.ts";
import * as say from "./trial-messages.ts";
import { inOwnUnits, type PrintTest } from "./trial-print.ts";
import * as shape from "./trial-shape-messages.ts";

/** From this p on the form of a curve is doubted: our own, the usual one in twenty. */
const misfitBelow = 0.05;

export function shapeFindings(report: TrialReport, print: PrintTest = inOwnUnits): readonly Finding[] {
  return [
    ...report.wild.map(({ test, batch, off, p }) =>
      shape.wildBatch(batch, test, print(Math.abs(off), test), off > 0 ? "above" : "below", pText(p)),
    ),
    ...report.lackOfFit
      .filter(({ p }) => p < misfitBelow)
      .map(({ test, f, df, p }) => shape.misfit(test, f.toPrecision(3), df, pText(p))),
    ...report.properties.flatMap((property) => ofProperty(report, property)),
    ...unlikeDays(report),
  ];
}

function ofProperty(report: TrialReport, property: TrialProperty): readonly Finding[] {
  const { test, curve, optimum, leftOut, figures, densityUnknown } = property;
  const count = figures.filter((one) => one !== undefined).length;
  const found: Finding[] = [];
  const out = report.rows.filter((_, i) => leftOut[i] && figures[i]).map(({ batch }) => batch.name);
  if (out.length > 0) found.push(say.densityApart(out.join(", "), test));
  if (test === "density" || test === "moisture") return found;
  if (densityUnknown && curve.form !== "points only") found.push(shape.densityUnknown(test));
  if (curve.form === "points only") found.push(say.pointsOnly(test, counted(count, "figure", "figures")));
  if (curve.form === "straight line") found.push(say.straightOnly(capital(test)));
  if (curve.prior) found.push(shape.publishedSlope(capital(test), curve.prior.says, curve.prior.source));
  if (optimum) found.push(turning(property, report));
  return found;
}

function turning({ test, optimum, curve }: TrialProperty, report: TrialReport): Finding {
  const { x, low, high, bounded, kind } = optimum!;
  // Limits that leave what was tried rest on the parabola alone.
  const inside = low >= curve.from && high <= curve.to;
  if (!bounded || !inside || kind === "minimum") return say.peakNotBounded(test);
  return say.peakAt(test, placeText({ x, low, high }, report), axisUnit(report));
}

function unlikeDays({ properties }: TrialReport): readonly Finding[] {
  const these = properties.some(({ curve }) => curve.newBlock === false && curve.form !== "points only");
  return these ? [shape.theseBlocksOnly()] : [];
}

function pText(p: number): string {
  return p < 0.001 ? "less than 0.001" : p.toPrecision(2);
}
