// Green compression strength by dead weight on a disc.

import type { Issue, Severity } from "../issue.ts";
import { issueMessage } from "../message.ts";
import { amount, amounts } from "../quantity/amount.ts";
import { isAboveZero, requireAboveZero } from "./require.ts";

/** Standard gravity, m/s². It differs by up to 0.3 % from place to place. */
export const GRAVITY_M_S2 = 9.80665;

/**
 * Ten to twenty kilograms stand above a specimen that breaks without warning: keep feet and fingers out from under,
 * and let the load have a stop to fall on.
 *
 * Green compression strength, kPa: load × g / (π d² / 4).
 * loadKg: all that stands on the specimen when it breaks, disc and pail with it, > 0, kg. diameterMm: of the
 * specimen, > 0, mm. Else RangeError. Any diameter, but the height should equal it: heightToDiameterIssues.
 * Test within two minutes of ramming: drying raises strength (university lab sheet).
 * Source: F / A. Example: compressionKPa({ loadKg: 10, diameterMm: 50.8 }) is 48.38.
 */
export function compressionKPa({
  loadKg,
  diameterMm,
}: {
  readonly loadKg: number;
  readonly diameterMm: number;
}): number {
  if (!(isAboveZero(loadKg) && isAboveZero(diameterMm)))
    requireAboveZero("compressionKPa", { loadKg, diameterMm });
  return (4000 * loadKg * GRAVITY_M_S2) / (Math.PI * diameterMm * diameterMm);
}

/**
 * Load that a strength stands for, kg: to choose weights before a test. strengthKPa, diameterMm > 0, else RangeError.
 * Source: as compressionKPa. Example: loadForKPa({ strengthKPa: 50, diameterMm: 50.8 }) is 10.33.
 */
export function loadForKPa({
  strengthKPa,
  diameterMm,
}: {
  readonly strengthKPa: number;
  readonly diameterMm: number;
}): number {
  requireAboveZero("loadForKPa", { strengthKPa, diameterMm });
  return (strengthKPa * Math.PI * diameterMm * diameterMm) / (4000 * GRAVITY_M_S2);
}

/** ± 1/16 in of 2 in: 3.125 %. */
const HEIGHT_TOLERANCE = 1 / 32;
/** Our own: beyond this the shape, not the sand, decides. */
const FAR = 0.25;

/**
 * Whether a specimen is as high as it is wide: the standard allows ± 1/16 in on 2 in, 3.1 %; a squat one reads strong,
 * a tall one weak. Beyond 3.1 % a warning, beyond 25 % an error (our own): not comparable with any published figure.
 * heightMm, diameterMm > 0, else RangeError. Source: tolerance from a lab manual of moulding-sand experiments.
 * Example: heightToDiameterIssues({ heightMm: 40, diameterMm: 50 })[0]?.severity is "warning".
 */
export function heightToDiameterIssues({
  heightMm,
  diameterMm,
}: {
  readonly heightMm: number;
  readonly diameterMm: number;
}): readonly Issue[] {
  requireAboveZero("heightToDiameterIssues", { heightMm, diameterMm });
  const ratio = heightMm / diameterMm;
  const off = Math.abs(ratio - 1);
  if (off <= HEIGHT_TOLERANCE + 1e-9) return [];
  return [specimenHeight(ratio.toFixed(2), ratio < 1, off > FAR + 1e-9 ? "error" : "warning")];
}

export const specimenHeight = issueMessage(
  "sand/specimen-height",
  ["warning", "error"],
  (ratio: string, squat: boolean, severity: Severity) => ({
    severity,
    message: `The specimen is ${ratio} times as high as it is wide; a ${squat ? "squat one reads strong" : "tall one reads weak"}, and figures of the trade are for 1.`,
    remedy: `Weigh out ${squat ? "more" : "less"} sand, so that three blows leave it as high as it is wide.`,
  }),
);

/** What green sands have shown, kPa: two lab sheets 30 to 160; the least of a quoted handbook 23.8. */
const USUAL_KPA = { low: 10, high: 250 };

/**
 * Whether a green compression strength looks like one in kPa; psi, kgf/cm² and N/cm² typed as kPa come out far too small.
 * strengthKPa > 0, else RangeError. Source: published 23.8 to 160 kPa, widened by us to 10 to 250.
 * Example: compressionIssues(7.5)[0]?.code is "sand/compression-unlikely", for 7.5 psi are 52 kPa.
 */
export function compressionIssues(strengthKPa: number): readonly Issue[] {
  requireAboveZero("compressionIssues", { strengthKPa });
  if (strengthKPa >= USUAL_KPA.low && strengthKPa <= USUAL_KPA.high) return [];
  const shown = Number(strengthKPa.toPrecision(3));
  const psi = Number((strengthKPa * 6.894757).toPrecision(2));
  return [
    compressionUnlikely(
      amount(strengthKPa, "kPa", 3),
      amounts(USUAL_KPA.low, USUAL_KPA.high, "kPa", 3),
      strengthKPa < USUAL_KPA.low ? `${shown} psi would be ${psi} kPa` : "",
    ),
  ];
}

/** ifPsi: "7.5 psi would be 52 kPa"; empty where that is no likely slip. */
export const compressionUnlikely = issueMessage(
  "sand/compression-unlikely",
  "warning",
  (strength: string, usual: string, ifPsi: string) => ({
    message: `${strength} is outside what green sand shows, ${usual}${ifPsi === "" ? "" : `; ${ifPsi}`}.`,
    remedy: "Look at the unit, the diameter, and whether pail and disc were weighed in.",
  }),
);
