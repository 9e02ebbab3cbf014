// Where the batches stand: the findings of a page, and the table behind them.

import type { Finding } from "../finding/finding.ts";
import { batchStandings, type Standing } from "../finding/standings.ts";
import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import type { Block } from "./blocks.ts";
import { type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";
import { testNumber } from "./trial-print.ts";

export interface TrialStanding {
  readonly findings: readonly Finding[];
  /** A fold with every batch against every range and curve; none where nothing is known to hold them against. */
  readonly blocks: readonly Block[];
}

/**
 * The batches of a log against the usual ranges of its metal and bond and the typical curves (batchStandings), in the
 * units that the page is printed in. varied: what the trial varies on purpose. gfn: the sand's grain fineness number.
 */
export function trialStanding(
  rows: readonly BatchFigures[],
  log: Log,
  more: {
    readonly units?: ShownUnits;
    readonly varied?: TestName | "clay" | undefined;
    readonly gfn?: number | undefined;
  } = {},
): TrialStanding {
  const units = more.units ?? shownUnits(log);
  const { findings, rows: placed } = batchStandings(rows, {
    metal: log.metal,
    bond: log.bond,
    gfn: more.gfn,
    varied: more.varied,
    print: (value, property) => testNumber(value, property, units),
    unit: (property, unit) => shownUnit(unit, units.of(property as TestName)),
  });
  if (placed.length === 0) return { findings, blocks: [] };
  return {
    findings,
    blocks: [
      {
        kind: "fold",
        summary: "Each batch against the usual ranges and the typical curves",
        blocks: [
          {
            kind: "table",
            name: "standing",
            caption:
              "Where each batch stands, and the chance by its own ± that it does; for a batch that cannot be told, the chance that it lies within",
            columns: [
              { head: "Property", align: "text" },
              { head: "Batch", align: "text" },
              { head: "Figure", align: "number" },
              { head: "Against", align: "text" },
              { head: "Low", align: "number" },
              { head: "High", align: "number" },
              { head: "Stands", align: "text" },
              { head: "Chance", unit: "in 100", align: "text" },
            ],
            rows: placed.map((one) => tableRow(one, units)),
          },
          { kind: "list", items: conditions(placed) },
        ],
      },
    ],
  };
}

function tableRow(one: Standing, units: ShownUnits) {
  const number = (value: number) => ({ text: testNumber(value, one.property, units), number: value });
  const { chance, atLeast } = one;
  const whole = chance === undefined ? 0 : Math.round(100 * chance);
  const printed = whole >= 98 ? "98 or more" : whole <= 2 ? "2 or fewer" : String(whole);
  return [
    one.property,
    one.batch,
    number(one.value),
    one.against,
    number(one.low),
    number(one.high),
    one.where === "not told" ? "cannot be told" : one.where,
    chance === undefined
      ? "± not known"
      : { text: atLeast ? `${printed}, at the surest` : printed, number: 100 * chance },
  ];
}

/** What each curve was asked at, batches with like conditions together. */
function conditions(placed: readonly Standing[]): string[] {
  const curves = placed.filter(({ against }) => against !== "usual range");
  const told = new Map<string, string>();
  for (const { against, batch, at } of curves) {
    told.set(against, [told.get(against) ?? `${against}, asked at:`, `${batch}, ${at}`].join(" "));
    told.set(against, `${told.get(against)};`);
  }
  return [...told.values()].map((line) => line.replace(/;$/, "."));
}
