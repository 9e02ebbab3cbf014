// Where the batches stand: the findings of a page, and the table behind them.

import type { Finding } from "../finding/finding.ts";
import type { Standing } from "../finding/standing-groups.ts";
import { batchStandings } from "../finding/standings.ts";
import { chanceText } from "../finding/trial-aim-findings.ts";
import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import { workedUnits } from "../log/worked-units.ts";
import type { Block, TableCell, TableColumn } from "./blocks.ts";
import { type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";
import { testNumber } from "./trial-print.ts";

export interface TrialStanding {
  readonly findings: readonly Finding[];
  /** A fold with every batch against every range and curve; none where nothing is known to hold them against. */
  readonly blocks: readonly Block[];
  readonly sources: readonly string[];
}

/**
 * The batches of a log against the usual ranges of its metal and bond and the typical curves (batchStandings), in the
 * units that the page is printed in. varied: what the trial varies on purpose. gfn: the sand's grain fineness number.
 * @example trialStanding(batchFigures(log).figures, log).findings.map(({ text }) => text)
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
  const {
    findings,
    rows: placed,
    sources,
  } = batchStandings(rows, {
    metal: log.metal,
    bond: log.bond,
    gfn: more.gfn,
    varied: more.varied,
    print: (value, property) => testNumber(value, property, units),
    unit: (property, unit) => shownUnit(unit, units.of(property as TestName)),
  });
  const names = [...new Set(placed.map(({ batch }) => batch))];
  const columns = [...firstBy(placed, columnKey).values()];
  const cells = firstBy(placed, (one) => `${columnKey(one)}\n${one.batch}`);
  if (placed.length === 0) return { findings, blocks: [], sources };
  return {
    findings,
    sources,
    blocks: [
      {
        kind: "fold",
        screenOnly: true,
        summary: "Each batch against the usual ranges and the typical curves",
        blocks: [
          {
            kind: "table",
            name: "standing",
            caption:
              "Where each batch stands, by its own ± with a chance of 97 in 100 or more unless another is named",
            columns: [
              { head: "Batch", align: "text" },
              ...columns.map(({ property, against }): TableColumn => {
                const { unit } = workedUnits[property as TestName] ?? { unit: "% of dry mix" };
                const shown = shownUnit(unit, units.of(property as TestName));
                return {
                  head: `${property}, ${against}`,
                  ...(shown === "" ? {} : { unit: shown }),
                  // A cell's number is its chance, whatever the range is printed in.
                  dataUnit: "% chance within",
                  align: "text",
                };
              }),
            ],
            rows: names.map((name) => [
              name,
              ...columns.map((column) => {
                const one = cells.get(`${columnKey(column)}\n${name}`);
                return one ? cell(one, units) : "";
              }),
            ]),
          },
          { kind: "list", items: conditions(placed) },
        ],
      },
    ],
  };
}

/** A name in a log is one line. */
const columnKey = ({ property, against }: Standing): string => `${property}\n${against}`;

function firstBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item> {
  const first = new Map<string, Item>();
  for (const item of items) {
    const key = keyOf(item);
    if (!first.has(key)) first.set(key, item);
  }
  return first;
}

/** "below 3.5 to 4.5"; "within 3.5 to 4.5: 78 in 100" where it cannot be told. */
function cell({ property, low, high, where, chance }: Standing, units: ShownUnits): TableCell {
  const range = `${testNumber(low, property, units)} to ${testNumber(high, property, units)}`;
  if (chance === undefined) return { text: `${where} ${range}, ± not known` };
  const text = where === "not told" ? `within ${range}: ${chanceText(chance)} in 100` : `${where} ${range}`;
  return { text, number: 100 * chance };
}

/** At what the curves were asked, and what the chances do not hold. */
function conditions(placed: readonly Standing[]): string[] {
  const clays = [...new Set(placed.flatMap(({ clay }) => clay ?? []))];
  return [
    ...(clays.length > 0
      ? [`The curves are asked at each batch's own clay (${clays.join("; ")}), water and compactability.`]
      : []),
    ...(placed.some(({ against }) => against === "permeability by clay and water")
      ? [
          "Permeability by clay and water is one published sand's own, of unknown fineness: its slope carries over, its level does not.",
        ]
      : []),
    ...(placed.some(({ atLeast }) => atLeast)
      ? ["Where a figure's ± is a lower bound, its chance is less sure than shown."]
      : []),
  ];
}
