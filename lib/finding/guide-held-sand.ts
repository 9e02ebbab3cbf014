// What a log holds of the first stages: sand, sieving, scales, rigs.

import type { Rig } from "../log/batch.ts";
import type { Log, Scale } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import { rammerEnergyJ } from "../sand/rammer.ts";
import { listed } from "./batch-names.ts";
import type { Held } from "./guide-held-state.ts";
import { capital, counted, heldBy } from "./guide-held-state.ts";
import * as say from "./guide-messages.ts";
import { figureText } from "./sand-findings.ts";
import { type SandReport, sandReports } from "./sand-report.ts";

export function sandHeld({ sands }: Log): Held {
  return sands.length === 0
    ? heldBy([], [say.noSand()])
    : heldBy([say.sandsNamed(listed(sands.map(({ name }) => name)))], []);
}

export function sievingHeld(log: Log): Held {
  const reports = sandReports(log);
  if (reports.length === 0) return heldBy([], [say.noSieving()]);
  const repeated = reports.some(({ trusted, sievings }) => trusted && sievings.length > 1);
  return heldBy(reports.map(sieved), repeated ? [] : [say.oneSieving()]);
}

const sieved = (report: SandReport) =>
  report.trusted
    ? say.sandFineness(report.sand.name, figureText(report), counted(report.sievings.length, "portion"))
    : say.sievedWithClay(report.sand.name);

export function scalesHeld({ scales }: Log): Held {
  if (scales.length === 0) return heldBy([], [say.noScale()]);
  const unchecked = scales.filter(({ withinG }) => withinG === undefined).map(({ name }) => name);
  return heldBy(scales.map(known), unchecked.length > 0 ? [say.scaleUnchecked(listed(unchecked))] : []);
}

const grams = (g: number): string => `${Number(g.toPrecision(3))} g`;
const known = ({ name, stepG, withinG }: Scale) =>
  say.scaleKnown(name, grams(stepG), withinG === undefined ? "" : grams(withinG));

/** So often is a test made on one batch before its scatter says something; our own. */
const leastRepeats = 3;

export function rigsHeld({ rigs, batches }: Log): Held {
  const most = batches
    .filter(({ usable }) => usable)
    .flatMap(({ name, readings }) =>
      readings.map(({ test }) => ({ name, test, times: readings.filter((one) => one.test === test).length })),
    )
    .reduce<{ readonly name: string; readonly test: string; readonly times: number } | undefined>(
      (best, one) => (best && best.times >= one.times ? best : one),
      undefined,
    );
  const repeated = most !== undefined && most.times >= leastRepeats;
  const noBlank = rigs.filter(({ fields }) => isAir(fields) && !fields.blankMm && !fields.blankS);
  const noBlow = rigs.filter((rig) => !isAir(rig.fields) && blowJ(rig) === undefined);
  const lacks = [
    ...(rigs.length === 0 ? [say.noRig()] : []),
    ...noBlow.map(({ name }) => say.rigWithout(name)),
    ...(noBlank.length > 0 ? [say.blankMissing(listed(noBlank.map(({ name }) => name)))] : []),
    ...(repeated ? [] : [say.noRepeats()]),
  ];
  const holds = [
    ...rigs.flatMap((rig) => {
      if (isAir(rig.fields)) return say.airRig(rig.name);
      const joules = blowJ(rig);
      return joules === undefined ? [] : say.rigBlow(rig.name, printNumber(joules, 2));
    }),
    ...(repeated ? [say.repeatsMade(capital(most.test), String(most.times), most.name)] : []),
  ];
  return heldBy(holds, lacks);
}

const isAir = (fields: Rig["fields"]): boolean =>
  fields.columnMm !== undefined || fields.vesselMl !== undefined || fields.blankMm !== undefined;

function blowJ({ fields: { rammerKg, dropMm } }: Rig): number | undefined {
  return rammerKg && dropMm && rammerEnergyJ({ weightKg: rammerKg.value, dropMm: dropMm.value });
}
