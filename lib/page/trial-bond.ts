// The state of the bond, as a section of a page.

import { namesTogether } from "../finding/batch-names.ts";
import { type BondFigures, bondFigures, type OrWhy } from "../finding/bond-figures.ts";
import { mulledAgainstReference } from "../finding/mulled-reference.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { Log } from "../log/types.ts";
import { printFigure } from "../quantity/print.ts";
import type { Block, Section, TableCell, TableColumn, Text } from "./blocks.ts";
import { bondFormulas } from "./bond-formulas.ts";
import { markedName } from "./trial-data.ts";

type Part = "waterPerClay" | "available" | "working" | "mulling" | "equilibrium" | "moistureAbove";
const parts: readonly (readonly [Part, TableColumn, string])[] = [
  ["waterPerClay", { head: "Water per clay", unit: "by mass", align: "number" }, "water per clay"],
  ["available", { head: "Available bond", unit: "% of sand", align: "number" }, "bond"],
  ["working", { head: "Working bond", unit: "% of sand", align: "number" }, "bond"],
  ["mulling", { head: "Muller efficiency", unit: "working of available, %", align: "number" }, "bond"],
  [
    "equilibrium",
    { head: "Equilibrium moisture", unit: "% of damp mass", align: "number" },
    "equilibrium moisture",
  ],
  [
    "moistureAbove",
    { head: "Moisture above it", unit: "points of damp mass", align: "number" },
    "equilibrium moisture",
  ],
];

/**
 * Water per clay, available and working bond, and equilibrium moisture of each batch, with the ± of readings and
 * relations, which clay is meant, and why a figure is missing; mulling efficiency where a reference was mulled. A batch
 * that the log leaves out stands in the table, marked, and takes no part in what is said of all. The section is empty
 * where no batch has a figure and none could have one (no clay known and nothing tested).
 * @example trialBond(batchFigures(log).figures, log).title
 */
export function trialBond(rows: readonly BatchFigures[], log: Log): Section {
  const found = rows.map((row) => bondFigures(row, log.bond));
  const counted = rows.filter(({ batch }) => !batch.keptOut);
  const inAll = found.filter((_, i) => !rows[i]!.batch.keptOut);
  const used = parts.filter(([part]) => found.some((one) => "figure" in one[part]));
  const blocks: Block[] = [];
  const names = rows.map(({ batch }) => batch.name);
  if (used.length > 0) {
    blocks.push(
      { kind: "prose", text: lead(inAll, used.length) },
      {
        kind: "table",
        name: "bond",
        caption:
          "State of the bond; ± holds the readings and, but for water per clay, 15 % for the relation itself (our own: none was printed)",
        columns: [
          { head: "Batch", align: "text" },
          ...used.map(([part, column]) => ({ ...column, ...bondFormulas[part] })),
        ],
        rows: found.map((one, i) => [markedName(rows[i]!), ...used.map(([part]) => cell(one[part], part))]),
      },
    );
    blocks.push({
      kind: "fold",
      summary: "What these figures mean, and where there is none",
      blocks: [{ kind: "list", items: notes(inAll, names, counted, log) }],
    });
  }
  return { role: "result", title: "State of the bond", blocks };
}

function cell(one: OrWhy, part: Part): TableCell {
  if ("why" in one) return { text: "no figure" };
  const { value, low, high } = one.figure;
  const least = part === "moistureAbove" ? {} : { min: 0 };
  return {
    text: printFigure({
      value,
      low: Math.min(low, value),
      high: Math.max(high, value),
      atLeast: one.atLeast,
      ...least,
    }).text,
    number: value,
  };
}

/** Which clay the figures count, and what the mulling of the batches comes to. */
function lead(found: readonly BondFigures[], columns: number): Text {
  const says = [...new Set(found.flatMap(({ clay }) => (clay ? [clay.says] : [])))];
  const clay = says.length === 0 ? "" : `The clay meant is ${says.join("; ")}.`;
  const working = found.flatMap(({ mulling }) => ("figure" in mulling ? [mulling.figure.value] : []));
  if (working.length === 0 || columns === 0) return clay;
  const [low, high] = [Math.min(...working), Math.max(...working)].map((value) => String(Math.round(value)));
  const span = low === high ? low! : `${low} to ${high}`;
  return [
    { strong: `${span} % of the clay that could bind does` },
    `, by two published relations (muller efficiency): longer mulling raises it. ${clay}`,
  ];
}

function notes(
  found: readonly BondFigures[],
  names: readonly string[],
  rows: readonly BatchFigures[],
  log: Log,
): Text[] {
  const missing = new Map<string, string[]>();
  for (const one of found) {
    for (const [part, , what] of parts) {
      const state = one[part];
      if (!("why" in state)) continue;
      const line = state.why.startsWith("No ") ? state.why : `no ${what}, for ${state.why}.`;
      const batches = missing.get(line) ?? [];
      if (!batches.includes(one.batch)) missing.set(line, [...batches, one.batch]);
    }
  }
  const { mulled, why } = mulledAgainstReference(rows, log);
  const against = mulled.map(({ batch, reference, efficiencyPercent, atLeast }) => {
    const { value, low, high } = efficiencyPercent;
    const text = printFigure({ value, low, high, atLeast, unit: "%" }).text;
    return `${text}: mulling efficiency of ${batch}, against ${reference} of the same sand (TJFS-108: strength × compactability / moisture, of the one by the other).`;
  });
  return [
    "Available bond, 0.105 s + 1.316 m: clay that could bind; working bond, 15.29 s/(132.1 − c): clay that does; s green compression in psi, m moisture, c compactability. From 2 to 5 % moisture, 30 to 55 % compactability, 34 to 241 kPa (5 to 35 psi); ICRI Report 610 (2003).",
    "Equilibrium moisture: what this clay and compactability would hold when fully mulled, by the same report, from 7 to 11 % live clay, in iron foundries' sands with fines and coal. A clean home sand may need less, so moisture above it hints at short mulling and proves nothing.",
    ...[...missing].map(([line, batches]) => `${namesTogether(batches, names)}: ${line}`),
    ...against,
    ...(why ? [why] : []),
  ];
}
