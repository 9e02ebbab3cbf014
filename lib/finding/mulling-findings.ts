// Decides what is worth saying of mulling.

import { printFigure, printNumber } from "../quantity/print.ts";
import type { MullingComparison } from "../trial/mulling-comparison.ts";
import { chanceWithin, type MullingInterval } from "../trial/mulling-curve.ts";
import type { Finding } from "./finding.ts";
import * as say from "./mulling-messages.ts";
import type { MulledWay, MullingReport } from "./mulling-report.ts";

/** A strength in the unit of the page. */
export type StrengthPrinter = (of: MullingInterval) => string;

/**
 * Findings of a report, the gravest first. strength: prints kPa as the page does.
 * @example mullingFindings(mullingReport(log), (of) => strengthText(of, "metric")).map(({ text }) => text)
 */
export function mullingFindings(report: MullingReport, strength: StrengthPrinter): readonly Finding[] {
  const order = ["error", "doubt", "good", "note"];
  return [
    ...report.ways.flatMap((way) => wayFindings(way, strength)),
    ...heat(report),
    ...report.comparisons.map(comparison),
    ...bonds(report, strength),
    ...asRun(report),
    ...practice(report),
    ...turns(report),
  ].sort((a, b) => order.indexOf(a.tone) - order.indexOf(b.tone));
}

/**
 * "9 min (7 to 14)", "9.4 ± 1.2 min"; "7 min or more" where the end is open; "at once" where the mix is there from the start.
 * @example minutesText({ value: 8.1, low: 6.2, high: 11.4 })
 */
export function minutesText({ value, low, high }: MullingInterval): string {
  if (!Number.isFinite(high)) return low > 0 ? `${one(low)} min or more` : "not known";
  if (high <= 0) return "no mulling at all";
  const printed = printFigure({ value, low, high, unit: "min", min: 0 });
  if (printed.form !== "range") return printed.text;
  return `${printed.value} min (${printed.low} to ${printed.high})`;
}

const one = (value: number): string => printNumber(value, value < 9.95 ? 1 : 0);

/** Up to the next half minute: what is enough is not rounded down. */
export function enoughMinutes(high: number): string {
  const half = Math.ceil(high * 2 - 1e-9) / 2;
  return printNumber(half, Number.isInteger(half) ? 0 : 1);
}

function wayFindings(
  { trial, curve, times, fell, moistureDrift }: MulledWay,
  strength: StrengthPrinter,
): Finding[] {
  const { name, readings } = trial;
  const found: Finding[] = [];
  if (!curve) {
    const count = new Set(readings.map(({ minutes }) => minutes.value)).size;
    found.push(say.tooFew(name, String(count)));
  } else if (curve.straight) {
    found.push(say.notBent(name, `${one(curve.longestMin)} min`));
  } else {
    for (const time of times.slice(-1)) {
      const share = String(time.sharePercent);
      found.push(
        Number.isFinite(time.high)
          ? say.timeKnown(name, share, minutesText(time), `${enoughMinutes(time.high)} min`)
          : say.timeOpen(
              name,
              share,
              time.low > 0 ? `${one(time.low)} min` : "0 min",
              `${one(curve.longestMin)} min`,
            ),
      );
    }
  }
  if (curve && fell) {
    const all = curve.readings.strengthKPa;
    const plain = (value: number): string => strength({ value, low: value, high: value });
    found.push(say.fellAtEnd(name, plain(all.at(-1)!), plain(Math.max(...all))));
  }
  if (moistureDrift !== undefined && Math.abs(moistureDrift) >= 0.3)
    found.push(say.moistureMoved(name, `${printNumber(moistureDrift, 1)} %`));
  return found;
}

/** "2.4 (1.3 to 4.4)". */
function timesText({ times }: MullingComparison): string {
  const { value, low, high } = times;
  if (high > 1e6) return low > 0 ? `${one(low)} or more` : "any number of";
  return `${one(value)} (${one(low)} to ${one(high)})`;
}

function comparison(of: MullingComparison): Finding {
  const { slower, quicker, told } = of;
  return (told ? say.toldApart : say.notToldApart)(slower, quicker, timesText(of));
}

function bonds({ comparisons, ways }: MullingReport, strength: StrengthPrinter): Finding[] {
  return comparisons.flatMap(({ slower, quicker }) => {
    const [a, b] = [slower, quicker].map((name) => ways.find(({ trial }) => trial.name === name)?.fullBond);
    if (!a || !b || !Number.isFinite(a.high) || !Number.isFinite(b.high)) return [];
    return [say.fullBonds(slower, strength(a), quicker, strength(b), a.high < b.low || b.high < a.low)];
  });
}

/** The way that was done in the log's muller: not by hand, and with its load where both loads are written; only where there is one. */
function machineWay({ ways, logged }: MullingReport): MulledWay | undefined {
  const load = logged?.loadKg?.value;
  const machines = ways.filter(
    ({ trial }) =>
      !/\bhand\b/i.test(trial.name) &&
      (load === undefined || trial.loadKg === undefined || Math.abs(trial.loadKg.value / load - 1) < 0.1),
  );
  return machines.length === 1 ? machines[0] : undefined;
}

function asRun(report: MullingReport): Finding[] {
  const minutes = report.logged?.minutes;
  const way = machineWay(report);
  const time = way?.times.at(-1);
  if (!minutes || !way || !time || !Number.isFinite(time.value)) return [];
  const chance = Math.round(100 * chanceWithin(time, minutes.value));
  const words = chance >= 99 ? "99 or more" : chance <= 1 ? "1 or fewer" : String(chance);
  return [say.mullsShort(`${printNumber(minutes.value, 0)} min`, words, way.trial.name)];
}

function practice(report: MullingReport): Finding[] {
  const way = machineWay(report);
  const time = way?.times.at(-1);
  if (!way || !time || !Number.isFinite(time.value)) return [];
  return [say.beside(`${minutesText(time)} until 95 % of full bond here, "${way.trial.name}".`)];
}

function heat({ muller, logged }: MullingReport): Finding[] {
  if (!logged?.sandC || muller.heat === undefined || muller.heat === "cool") return [];
  const celsius = `${printNumber(logged.sandC.value, 0)} °C (${printNumber(1.8 * logged.sandC.value + 32, 0)} °F) in the sand`;
  return [muller.heat === "too hot to mull" ? say.tooHotToMull(celsius) : say.hotToMull(celsius)];
}

function turns({ muller }: MullingReport): Finding[] {
  if (!muller.rpm) return [];
  const { value, low, high } = muller.rpm;
  const text = low === high ? printNumber(value, 1) : printFigure({ value, low, high, min: 0 }).text;
  return [say.panTurns(text)];
}
