// The messages of the grain models: one function for each code, with plain arguments.

import { issueMessage } from "../message.ts";

/** Three figures, without an exponent for the sizes and shares that occur here. */
const short = (x: number): string => String(Number(x.toPrecision(3)));

export const beyondCoarsestSieve = issueMessage(
  "sand/beyond-coarsest-sieve",
  "warning",
  (label: string, openingMm: number, heldPercent: number, missing: string) => ({
    message: `${short(heldPercent)} % of the sand stays on the coarsest sieve (${label}, ${short(openingMm)} mm), and how coarse it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Sieve again with a coarser sieve on top.",
  }),
);

export const beyondFinestSieve = issueMessage(
  "sand/beyond-finest-sieve",
  "warning",
  (label: string, openingMm: number, passingPercent: number, missing: string) => ({
    message: `${short(passingPercent)} % of the sand passes the finest sieve (${label}, ${short(openingMm)} mm), and how fine it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Add a finer sieve under the stack.",
  }),
);

export const outsideStack = issueMessage(
  "sand/outside-stack",
  "warning",
  (openingMm: number, coarsestMm: number, finestMm: number) => ({
    message: `${short(openingMm)} mm lies outside the sieves used (${short(coarsestMm)} to ${short(finestMm)} mm), so the share that passes it was not measured.`,
    remedy: "Add a sieve at or beyond this opening.",
  }),
);

export const tooFewSieves = issueMessage("sand/too-few-sieves", "warning", (figure: string) => ({
  message: `There are too few sieves for ${figure}.`,
  remedy: "Use at least two sieves above the pan; four or more give a curve worth reading.",
}));

export const curveExtended = issueMessage("sand/curve-extended", "warning", (figures: string) => ({
  message: `The curve was carried on past the end of the stack, as asked, for ${figures}: nothing was measured there.`,
}));

export const noPan = issueMessage("sand/no-pan", "warning", (what: string) => ({
  message: `No pan was weighed, so ${what} counts only what stayed on the sieves, and whatever passed them all is missing.`,
  remedy: "Weigh the pan too, even if it reads zero.",
}));

export const panMidAssumed = issueMessage(
  "sand/pan-middle-assumed",
  ["warning", "note"],
  (panPercent: number, panMidPhi: number, doubtful: boolean) => ({
    severity: doubtful ? "warning" : "note",
    message: `The moments take the pan (${short(panPercent)} % of the sand) as grains of ${short(panMidPhi)} phi, which was not measured${doubtful ? "; with so much in the pan they are in doubt" : ""}.`,
  }),
);

export const topMidAssumed = issueMessage(
  "sand/top-middle-assumed",
  ["warning", "note"],
  (topPercent: number, label: string) => ({
    severity: topPercent > 1 ? "warning" : "note",
    message: `What stays on the coarsest sieve (${label}, ${short(topPercent)} % of the sand) is taken to be no coarser than twice its opening, which was not measured.`,
    remedy: "Sieve again with a coarser sieve on top.",
  }),
);

export const panMidNeeded = issueMessage(
  "sand/pan-middle-needed",
  "warning",
  (panPercent: number, openingMm: number) => ({
    message: `The finest sieve is ${short(openingMm)} mm and ${short(panPercent)} % lies in the pan below it; its size is too open for moments.`,
    remedy: "Add a No. 200 sieve or finer, or say what size the pan should count as (panMidPhi).",
  }),
);

export const panDrivesSurface = issueMessage(
  "sand/pan-drives-surface",
  ["warning", "note"],
  (massPercent: number, surfacePercent: number) => ({
    severity: surfacePercent > 20 ? "warning" : "note",
    message: `${short(surfacePercent)} % of the surface comes from the ${short(massPercent)} % of the sand in the pan, whose size was not measured.`,
  }),
);

export const finesBetweenSieves = issueMessage(
  "sand/fines-between-sieves",
  "note",
  (low: number, high: number) => ({
    message: `There is no No. 140 sieve in the stack, so the fines are somewhere from ${short(low)} to ${short(high)} % of the sand.`,
    remedy: "Add a No. 140 sieve (0.106 mm).",
  }),
);

export const notWholeAfsStack = issueMessage("sand/not-whole-afs-stack", "note", (missing: string) => ({
  message: `The screen count is meant for the AFS sieves; ${missing}, so a sieve here may hold what two would share, or two what one would hold.`,
}));

export const gapGraded = issueMessage(
  "sand/gap-graded",
  "warning",
  (gap: string, coarse: string, fine: string) => ({
    message: `${gap} nearly empty between ${coarse} and ${fine}: the sand is gap-graded.`,
    remedy: "Look whether two sands were mixed, or a sieve is torn or blinded.",
  }),
);

export const oneSize = issueMessage("sand/one-size", "note", (figures: string) => ({
  message: `All the sand stands in one class, so there is no width to divide by for ${figures}.`,
  remedy: "Put sieves of other openings into the stack.",
}));
