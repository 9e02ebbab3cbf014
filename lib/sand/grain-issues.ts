// The messages of the grain models: one function for each code, with plain arguments.

import type { Severity } from "../issue.ts";
import { issueMessage } from "../message.ts";

export const beyondCoarsestSieve = issueMessage(
  "sand/beyond-coarsest-sieve",
  "warning",
  (label: string, opening: string, heldPercent: string, missing: string) => ({
    message: `${heldPercent} % of the sand stays on the coarsest sieve (${label}, ${opening}), and how coarse it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Sieve again with a coarser sieve on top.",
  }),
);

export const beyondFinestSieve = issueMessage(
  "sand/beyond-finest-sieve",
  "warning",
  (label: string, opening: string, passingPercent: string, missing: string) => ({
    message: `${passingPercent} % of the sand passes the finest sieve (${label}, ${opening}), and how fine it is was not measured. Cannot be read: ${missing}.`,
    remedy: "Add a finer sieve under the stack.",
  }),
);

export const outsideStack = issueMessage(
  "sand/outside-stack",
  "warning",
  (opening: string, coarsest: string, finest: string) => ({
    message: `${opening} lies outside the sieves used (${coarsest} to ${finest}), so the share that passes it was not measured.`,
    remedy: "Add a sieve at or beyond this opening.",
  }),
);

export const tooFewSieves = issueMessage("sand/too-few-sieves", "warning", (figure: string) => ({
  message: `There are too few sieves for ${figure}.`,
  remedy: "Use at least two sieves above the pan; four or more give a curve worth reading.",
}));

export const curveExtended = issueMessage("sand/curve-extended", "warning", (figures: string) => ({
  message: `The curve was carried on past the end of the stack, as asked, for ${figures}: nothing was measured there.`,
  remedy: "Take those figures as guesses; a coarser sieve on top or a finer one below measures them.",
}));

export const noPan = issueMessage("sand/no-pan", "warning", (what: string) => ({
  message: `No pan was weighed, so ${what} counts only what stayed on the sieves, and whatever passed them all is missing.`,
  remedy: "Weigh the pan too, even if it reads zero.",
}));

export const panMidAssumed = issueMessage(
  "sand/pan-middle-assumed",
  ["warning", "note"],
  (panPercent: string, panMidPhi: string, doubtful: boolean) => ({
    severity: doubtful ? "warning" : "note",
    message: `The moments take the pan (${panPercent} % of the sand) as grains of ${panMidPhi} phi, which was not measured${doubtful ? "; with so much in the pan they are in doubt" : ""}.`,
    remedy: "Put a finer sieve above the pan, so that less lies in it.",
  }),
);

export const topMidAssumed = issueMessage(
  "sand/top-middle-assumed",
  ["warning", "note"],
  (topPercent: string, label: string, severity: Severity) => ({
    severity,
    message: `What stays on the coarsest sieve (${label}, ${topPercent} % of the sand) is taken to be no coarser than twice its opening, which was not measured.`,
    remedy: "Sieve again with a coarser sieve on top.",
  }),
);

export const panMidNeeded = issueMessage(
  "sand/pan-middle-needed",
  "warning",
  (panPercent: string, opening: string) => ({
    message: `The finest sieve is ${opening} and ${panPercent} % lies in the pan below it; its size is too open for moments.`,
    remedy: "Add a No. 200 sieve or finer, or say what size the pan should count as (panMidPhi).",
  }),
);

export const panDrivesSurface = issueMessage(
  "sand/pan-drives-surface",
  ["warning", "note"],
  (massPercent: string, surfacePercent: string, severity: Severity) => ({
    severity,
    message: `${surfacePercent} % of the surface comes from the ${massPercent} % of the sand in the pan, whose size was not measured.`,
    remedy: "Put a finer sieve above the pan; until then take the surface as a rough figure.",
  }),
);

export const finesBetweenSieves = issueMessage(
  "sand/fines-between-sieves",
  "note",
  (low: string, high: string) => ({
    message: `There is no No. 140 sieve in the stack, so the fines are somewhere from ${low} to ${high} % of the sand.`,
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
