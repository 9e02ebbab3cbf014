// The messages of the grain models: one function for each code, with plain arguments.

import type { Issue } from "../issue.ts";

/** Three figures, without an exponent for the sizes and shares that occur here. */
const short = (x: number): string => String(Number(x.toPrecision(3)));

export function beyondCoarsestSieve(
  label: string,
  openingMm: number,
  heldPercent: number,
  missing: string,
): Issue {
  return {
    code: "sand/beyond-coarsest-sieve",
    severity: "warning",
    message: `${short(heldPercent)} % of the sand stays on the coarsest sieve (${label}, ${short(openingMm)} mm), and how coarse it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Sieve again with a coarser sieve on top.",
  };
}

export function beyondFinestSieve(
  label: string,
  openingMm: number,
  passingPercent: number,
  missing: string,
): Issue {
  return {
    code: "sand/beyond-finest-sieve",
    severity: "warning",
    message: `${short(passingPercent)} % of the sand passes the finest sieve (${label}, ${short(openingMm)} mm), and how fine it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Add a finer sieve under the stack.",
  };
}

export function outsideStack(openingMm: number, coarsestMm: number, finestMm: number): Issue {
  return {
    code: "sand/outside-stack",
    severity: "warning",
    message: `${short(openingMm)} mm lies outside the sieves used (${short(coarsestMm)} to ${short(finestMm)} mm), so the share that passes it was not measured.`,
    remedy: "Add a sieve at or beyond this opening.",
  };
}

export function tooFewSieves(figure: string): Issue {
  return {
    code: "sand/too-few-sieves",
    severity: "warning",
    message: `There are too few sieves for ${figure}.`,
    remedy: "Use at least two sieves above the pan; four or more give a curve worth reading.",
  };
}

export function curveExtended(figures: string): Issue {
  return {
    code: "sand/curve-extended",
    severity: "warning",
    message: `The curve was carried on past the end of the stack, as asked, for ${figures}: nothing was measured there.`,
  };
}

export function noPan(what: string): Issue {
  return {
    code: "sand/no-pan",
    severity: "warning",
    message: `No pan was weighed, so ${what} counts only what stayed on the sieves, and whatever passed them all is missing.`,
    remedy: "Weigh the pan too, even if it reads zero.",
  };
}

export function panMidAssumed(panPercent: number, panMidPhi: number, doubtful: boolean): Issue {
  return {
    code: "sand/pan-middle-assumed",
    severity: doubtful ? "warning" : "note",
    message: `The moments take the pan (${short(panPercent)} % of the sand) as grains of ${short(panMidPhi)} phi, which was not measured${doubtful ? "; with so much in the pan they are in doubt" : ""}.`,
  };
}

export function topMidAssumed(topPercent: number, label: string): Issue {
  return {
    code: "sand/top-middle-assumed",
    severity: topPercent > 1 ? "warning" : "note",
    message: `What stays on the coarsest sieve (${label}, ${short(topPercent)} % of the sand) is taken to be no coarser than twice its opening, which was not measured.`,
    remedy: "Sieve again with a coarser sieve on top.",
  };
}

export function panMidNeeded(panPercent: number, openingMm: number): Issue {
  return {
    code: "sand/pan-middle-needed",
    severity: "warning",
    message: `The finest sieve is ${short(openingMm)} mm and ${short(panPercent)} % lies in the pan below it; its size is too open for moments.`,
    remedy: "Add a No. 200 sieve or finer, or say what size the pan should count as (panMidPhi).",
  };
}

export function panDrivesSurface(massPercent: number, surfacePercent: number): Issue {
  return {
    code: "sand/pan-drives-surface",
    severity: surfacePercent > 20 ? "warning" : "note",
    message: `${short(surfacePercent)} % of the surface comes from the ${short(massPercent)} % of the sand in the pan, whose size was not measured.`,
  };
}

export function finesBetweenSieves(low: number, high: number): Issue {
  return {
    code: "sand/fines-between-sieves",
    severity: "note",
    message: `There is no No. 140 sieve in the stack, so the fines are somewhere from ${short(low)} to ${short(high)} % of the sand.`,
    remedy: "Add a No. 140 sieve (0.106 mm).",
  };
}

export function notWholeAfsStack(missing: string): Issue {
  return {
    code: "sand/not-whole-afs-stack",
    severity: "note",
    message: `The screen count is meant for the AFS sieves; ${missing}, so a sieve here may hold what two would share, or two what one would hold.`,
  };
}

export function gapGraded(gap: string, coarse: string, fine: string): Issue {
  return {
    code: "sand/gap-graded",
    severity: "warning",
    message: `${gap} nearly empty between ${coarse} and ${fine}: the sand is gap-graded.`,
    remedy: "Look whether two sands were mixed, or a sieve is torn or blinded.",
  };
}

export function oneSize(figures: string): Issue {
  return {
    code: "sand/one-size",
    severity: "note",
    message: `All the sand stands in one class, so there is no width to divide by for ${figures}.`,
    remedy: "Put sieves of other openings into the stack.",
  };
}
