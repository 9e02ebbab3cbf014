// What each curve of a trial is, where it turns, and which batches do not belong to it.

import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { capital, counted } from "./trial-aim-findings.ts";
import { axisInWords, placeText } from "./trial-axis.ts";
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
    ...alike(report.properties, unchecked, shape.densityUnknown),
    ...alike(report.properties, noTurn, say.peakNotBounded),
    ...unlikeDays(report),
  ];
}

function ofProperty(report: TrialReport, property: TrialProperty): readonly Finding[] {
  const { test, curve, optimum, leftOut, figures } = property;
  const count = figures.filter((one) => one !== undefined).length;
  const found: Finding[] = [];
  const out = report.rows.filter((_, i) => leftOut[i] && figures[i]).map(({ batch }) => batch.name);
  if (out.length > 0) found.push(say.densityApart(out.join(", "), test));
  if (test === "density" || test === "moisture") return found;
  if (curve.form === "points only") found.push(say.pointsOnly(test, counted(count, "figure", "figures")));
  if (curve.form === "straight line") found.push(say.straightOnly(capital(test)));
  if (curve.prior) found.push(shape.publishedSlope(capital(test), curve.prior.says, curve.prior.source));
  if (optimum && !noTurn(property))
    found.push(say.peakAt(test, placeText(optimum, report), axisInWords(report)));
  return found;
}

/** One sentence for all properties that it holds for. */
function alike(
  properties: readonly TrialProperty[],
  holds: (property: TrialProperty) => boolean,
  words: (tests: string) => Finding,
): readonly Finding[] {
  const tests = properties.filter(holds).map(({ test }) => test);
  return tests.length === 0 ? [] : [words(listed(tests))];
}

const unchecked = ({ densityUnknown, curve: { form } }: TrialProperty): boolean =>
  densityUnknown && form !== "points only";

/** Limits that leave what was tried rest on the parabola alone. */
function noTurn({ test, optimum, curve }: TrialProperty): boolean {
  if (!optimum || test === "density" || test === "moisture") return false;
  const { low, high, bounded, kind } = optimum;
  return !(bounded && low >= curve.from && high <= curve.to) || kind === "minimum";
}

function unlikeDays({ properties }: TrialReport): readonly Finding[] {
  const these = properties.some(({ curve }) => curve.newBlock === false && curve.form !== "points only");
  return these ? [shape.theseBlocksOnly()] : [];
}

function pText(p: number): string {
  return p < 0.001 ? "less than 0.001" : p.toPrecision(2);
}
