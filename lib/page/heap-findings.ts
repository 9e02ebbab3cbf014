// The findings of a heap's page, from its report.

import type { Finding } from "../finding/finding.ts";
import type { HeapMending } from "../finding/heap-mending.ts";
import * as say from "../finding/heap-messages.ts";
import type { HeapReport } from "../finding/heap-report.ts";
import type { SandApart, WithinDoubt } from "../finding/heap-sand-wish.ts";
import type { HeapSeason } from "../finding/heap-season.ts";
import type { UnitSystem } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import type { OwnBurnOut } from "../trial/own-burn-out.ts";
import { bandText, poursText } from "./heap-text.ts";
import { inShownUnit, shownUnit } from "./shown-units.ts";
import { massFigureText, massText } from "./trial-print.ts";

/**
 * What mends the heap, and what its record says of burnt sand.
 * @example heapFindings(heapReport(log), "metric").map(({ text }) => text)
 */
export function heapFindings(report: HeapReport, system: UnitSystem): readonly Finding[] {
  const { burnOut, mending, season, missing } = report;
  return [
    ...(mending ? mendFindings(mending, system) : []),
    ...(burnOut ? [burnOutFinding(burnOut, system)] : []),
    ...(season ? seasonFindings(season, system) : []),
    ...(missing.length > 0 ? [say.lacks(listed(missing))] : []),
  ];
}

/** Water, clay and sand that mend the heap, and how much of it at once. */
export function mendFindings(mending: HeapMending, system: UnitSystem): readonly Finding[] {
  const { clayKg, newSandKg, waterKg, keepingMass, atOnce, bounds, atLeast } = mending;
  const mass = (figure: typeof clayKg): string => massFigureText(figure, system, atLeast);
  const wet = waterKg.value < 0;
  const isWanted = ({ value }: typeof clayKg): boolean => value > 0;
  const whole = (figure: typeof clayKg): string => (isWanted(figure) ? mass(figure) : "");
  const once = (figure: typeof clayKg, most: number): string => (isWanted(figure) ? about(most, system) : "");
  const lose = { value: -waterKg.value, low: -waterKg.high, high: -waterKg.low };
  return [
    say.mend(whole(clayKg), whole(newSandKg), wet ? "" : mass(waterKg)),
    ...(wet ? [say.tooWet(massFigureText(lose, system), massText(mending.dryMixInsteadKg, system))] : []),
    ...([clayKg, newSandKg, waterKg].some(isWanted)
      ? [
          say.atOnce(
            once(clayKg, atOnce.clayKg),
            once(newSandKg, atOnce.newSandKg),
            once(waterKg, atOnce.waterKg),
          ),
        ]
      : []),
    ...(newSandKg.value > 0
      ? [say.throwOut(mass(keepingMass.throwOutDryKg), mass(keepingMass.clayKg), mass(keepingMass.newSandKg))]
      : []),
    ...(mending.sandApart ? [apartFinding(mending.sandApart, mass, system)] : []),
    ...mending.withinDoubt.map(notAsked),
    ...(mending.newSandUnknown ? [say.newSandUnknown()] : []),
    ...(mending.sandHelps ? [] : [say.sandNoHelp()]),
    ...(bounds ? [say.boundsOnly(printNumber(bounds.low, 1), printNumber(bounds.high, 1))] : []),
  ];
}

function apartFinding(
  { allKg, throwOutDryKg, mostKg, clayMoreKg, gfn }: SandApart,
  mass: (figure: HeapMending["newSandKg"]) => string,
  system: UnitSystem,
): Finding {
  const number = (x: number): string => printNumber(x, 1).replace(/\.0$/, "");
  return say.sandApart(
    about(mostKg, system),
    gfn && { have: number(gfn.have), after: number(gfn.after), wanted: number(gfn.wanted) },
    clayMoreKg > 0 ? about(clayMoreKg, system) : "",
    mass(allKg),
    mass(throwOutDryKg),
  );
}

function notAsked({ what, have, wanted, plusMinus, taken }: WithinDoubt): Finding {
  const unit = what === "fines" ? " % of grain" : "";
  return say.sandNotAsked(what, String(have), String(wanted), unit, String(plusMinus), taken);
}

/** In two digits: a limit, or a first dose. */
function about(massKg: number, system: UnitSystem): string {
  const [, number, unit] = /^(\S+) (.*)$/.exec(massText(massKg, system))!;
  return `${Number(Number(number).toPrecision(2))} ${unit}`;
}

function burnOutFinding(
  { own, prior, tests, pours, metalKg, moved, widthShare }: OwnBurnOut,
  system: UnitSystem,
): Finding {
  const on = say.testsMade(String(tests.strength), String(tests.liveClay));
  const metal = inShownUnit(metalKg, "kg", system);
  const over = say.poursMade(String(pours), `${printNumber(metal.value, 1)} ${metal.unit}`);
  const each = say.burntPerMetal(system === "US");
  return moved
    ? say.ownBurnOut(bandText(own), range(prior), each, on, over)
    : say.notMoved(range(prior), each, on, over, printNumber(100 * Math.min(1, widthShare), 0));
}

const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
  `${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))}`;

function seasonFindings(season: HeapSeason, system: UnitSystem): readonly Finding[] {
  const { plan, toFloor, floorPercent, whatIf, halfWayPours, currency } = season;
  const [planned] = whatIf;
  const when = poursText(toFloor, plan.pours);
  const first = toFloor.high <= 1;
  const tons = inShownUnit(1000, "kg", system);
  const cost = planned?.cost ? `, ${bandText(planned.cost)}${currency === "" ? "" : ` ${currency}`}` : "";
  return [
    say.rebondIn(
      first ? "" : when,
      printNumber(floorPercent, 1),
      String(plan.pours),
      massText(plan.metalKg, system),
      planned ? poursText(planned.toFloor, plan.pours) : "",
    ),
    ...(planned
      ? [
          say.buyPerTon(
            `${printNumber(tons.value, 0)} ${tons.unit}`,
            kg(planned.clayKg, system),
            kg(planned.newSandKg, system),
            cost,
          ),
          ...(Number.isFinite(planned.deadClayPercent.value)
            ? [say.settles(bandText(planned.deadClayPercent), printNumber(halfWayPours, 0))]
            : []),
        ]
      : []),
  ];
}

function kg({ value, low, high }: { value: number; low: number; high: number }, system: UnitSystem): string {
  const to = (x: number): number => inShownUnit(x, "kg", system).value;
  return `${bandText({ value: to(value), low: to(low), high: to(high) })} ${shownUnit("kg", system)}`;
}

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
