// What can be wrong with a stack of sieves or with what it held: one message function each.

import type { Issue } from "../issue.ts";

type Level = Issue["severity"];
const make = (code: string, severity: Level, about: string, message: string, remedy: string): Issue =>
  Object.freeze({ code: `sand/${code}`, severity, about, message, remedy });

export const repeatedSieve = (label: string, first: string): Issue =>
  make(
    "sieve-repeated",
    "error",
    label,
    label === first
      ? `"${label}" is listed twice.`
      : `"${label}" is listed although "${first}" has the same opening.`,
    "Keep one of the two; if both are on your stack, add their masses.",
  );

export const misplacedSieve = (upper: string, lower: string): Issue =>
  make(
    "sieve-misplaced",
    "warning",
    lower,
    `"${upper}" is listed above "${lower}", which is coarser; the stack is taken coarse to fine.`,
    "Check that the two masses were not written to each other's sieve.",
  );

export const panNotLast = (next: string): Issue =>
  make(
    "pan-not-last",
    "warning",
    "pan",
    `The pan is listed above "${next}"; it is taken as the last.`,
    "Check that the pan's mass stands at the pan.",
  );

export const panMissing = (): Issue =>
  make(
    "pan-missing",
    "warning",
    "pan",
    "There is no pan, so what passed the finest sieve is not known.",
    'Add "pan" with what it held, or 0 where it was weighed and empty.',
  );

export const massNotNumber = (label: string, found: string): Issue =>
  make(
    "mass-not-number",
    "error",
    label,
    `The mass on "${label}" is ${found}, which is not a number.`,
    "Write the mass in grams or percent, or leave the sieve out if it was not used.",
  );

export const massNegative = (label: string, mass: string): Issue =>
  make(
    "mass-negative",
    "error",
    label,
    `The mass on "${label}" is ${mass}, below zero.`,
    "Weigh it again, and check the tare of the dish.",
  );

export const nothingRetained = (): Issue =>
  make(
    "nothing-retained",
    "error",
    "",
    "No sieve holds anything, so there is nothing to work out.",
    "Give the mass that each sieve and the pan held.",
  );

export const schemeSievesMissing = (scheme: string, missing: readonly string[]): Issue =>
  make(
    "scheme-sieves-missing",
    "error",
    missing.join(", "),
    `The ${scheme} cannot be worked out from this stack: ${missing.join(", ")} ${missing.length === 1 ? "is" : "are"} missing, where grains lie.`,
    "Sieve on the stack of the scheme; nothing is guessed between two sieves here.",
  );

export const noMultiplier = (scheme: string, label: string): Issue =>
  make(
    "no-multiplier",
    "error",
    label,
    `The ${scheme} has no multiplier for what ${label} holds.`,
    "Riddle out what is coarser than sand, and sieve the rest.",
  );
