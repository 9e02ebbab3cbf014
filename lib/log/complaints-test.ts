// What can be wrong with a reading of a test.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const psiForKPa = (what: string, text: string, asPsi: string, ifPsi: string): Issue =>
  issue(
    "warning",
    "psi-for-kpa",
    `"${text}" for ${what} is read as kPa: ${text} kPa is ${asPsi} psi, very little; ${text} psi would be ${ifPsi} kPa.`,
    `Write the unit: ${text} psi or ${text} kPa.`,
  );

export const dryBasis = (text: string, value: string, ofDamp: string): Issue =>
  issue(
    "error",
    "dry-basis",
    `"${text}" counts the water of the dry mass, as soil tests do; a log's moisture is of the damp mass. ${value} % of the dry mass is ${ofDamp} % of the damp mass.`,
    `Write ${ofDamp} % if the figure is of the dry mass, ${value} % if it is of the damp mass after all.`,
  );

export const washBasis = (text: string, ofMix: string, ofSand: string, ofDamp: string): Issue =>
  issue(
    "error",
    "wash-basis",
    `"${text}" does not say of what: it may be of the dry mix (${ofMix} % of dry mix), per 100 of sand (${ofSand} % of dry mix), or of the damp mass (${ofDamp} % of dry mix at 3.5 % moisture).`,
    `Write the one that is meant, e.g. \`clay by wash: ${ofMix} % of dry mix\`.`,
  );

export const dishAboveDry = (dish: string, dry: string): Issue =>
  issue(
    "error",
    "dish-above-dry",
    `The empty dish weighs ${dish} g, the dish with the dry sand only ${dry} g.`,
    "Where a dish is given, damp and dry are weighed with it; leave `dish` out if the scale was set to zero with it.",
  );

export const levelNotFalling = (from: string, to: string): Issue =>
  issue(
    "error",
    "level-not-falling",
    `The pressure goes from ${from} mm to ${to} mm, but air that flows through the sand lets it fall.`,
    "Write the difference of the levels at the start as `from`, that at the end as `to`.",
  );

export const densityImpossible = (density: string, from: string): Issue =>
  issue(
    "error",
    "density-impossible",
    `The specimen would have ${density} g/cm³ (${from}), which no rammed sand has.`,
    "Look for cm in the place of mm, a radius in the place of the diameter, and the tare of the tube.",
  );

export const missingField = (test: string, missing: string, says: string): Issue =>
  issue(
    "error",
    "missing-field",
    `This reading of ${test} lacks \`${missing}\` (${says}), so it is left out.`,
    `Add \`${missing}: ...\` to it, or write the number that you worked out: \`${test}: ...\`.`,
  );

export const emptyReading = (test: string, fields: string): Issue =>
  issue(
    "error",
    "empty-reading",
    `No figure of ${test} is given, so it is left out.`,
    `Write the number itself, or the readings: ${fields}.`,
  );

export const methodUnsaid = (test: string, methods: string): Issue =>
  issue(
    "warning",
    "method-unsaid",
    `It is not said by which method ${test} was found; methods differ and are never mixed.`,
    `Add \`method: ...\`, one of: ${methods}.`,
  );

export const methodNeeded = (test: string, methods: string): Issue =>
  issue(
    "error",
    "method-needed",
    `The fields do not tell by which method ${test} was tested, so it is left out.`,
    `Add \`method: ...\`, one of: ${methods}.`,
  );

export const notAStep = (text: string, steps: string): Issue =>
  issue(
    "error",
    "not-a-step",
    `"${text}" is no step of the squeeze.`,
    `Write a whole number from 1 to 5: ${steps}.`,
  );

export const figureUnsteady = (test: string): Issue =>
  issue(
    "error",
    "figure-unsteady",
    `Within the ± of its readings this test of ${test} may come out at anything, so no figure is given.`,
    "Read more finely, or take a longer time, a larger difference or a larger sample.",
  );
