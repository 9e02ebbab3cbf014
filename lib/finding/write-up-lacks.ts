// What somebody who wants to repeat the experiment would miss in its log.

import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import { listed, namesTogether } from "./batch-names.ts";
import { lackOf } from "./write-up-messages.ts";
import type { WriteUp } from "./write-up-record.ts";

/** Tests of which a figure depends on the rig. */
const onARig: readonly TestName[] = [
  "compactability",
  "green compression",
  "green shear",
  "splitting",
  "permeability",
  "density",
];

/** Each as a line that says where it is to be written; none where nothing is lacking. */
export function lacking({ record, rows, days, sands, log }: WriteUp): readonly string[] {
  const batchesWithout = (has: (row: BatchFigures) => boolean): string => {
    const names = rows.map(({ batch }) => batch.name);
    const silent = rows.filter((row) => !has(row)).map(({ batch }) => batch.name);
    return silent.length === names.length ? "the batches" : namesTogether(silent, names);
  };
  const lineFor = (has: (row: BatchFigures) => boolean, line: (names: string) => string): string[] =>
    rows.every(has) ? [] : [line(batchesWithout(has))];
  const rigless = onARig.filter((test) =>
    rows.some(({ batch }) =>
      batch.readings.some((reading) => reading.test === test && !reading.rig && !reading.worked),
    ),
  );
  const rigs = new Set(
    rows.flatMap(({ batch }) =>
      batch.readings.flatMap(({ rig, test }) => (rig && test !== "permeability" ? [rig] : [])),
    ),
  );
  const ramless = [...rigs].filter(({ fields }) => !fields.rammerKg || !fields.dropMm || !fields.blows);
  return [
    ...(record?.question ? [] : [lackOf.question]),
    ...(record && record.changed.length > 0 ? [] : [lackOf.changed]),
    ...(record && record.expected.length > 0 ? [] : [lackOf.expected]),
    ...(record && record.measured.length > 0 ? [] : [lackOf.measured]),
    ...(record?.version ? [] : [lackOf.version]),
    ...(record && record.open.length > 0 ? [] : [lackOf.open]),
    ...(days ? [] : [lackOf.days]),
    ...lineFor(({ batch }) => batch.recipe !== undefined, lackOf.recipe),
    ...(rows.length > 1 ? lineFor(({ batch }) => batch.order !== undefined, lackOf.order) : []),
    ...lineFor(({ batch }) => batch.mulledMin !== undefined, lackOf.mulled),
    ...lineFor(({ batch }) => batch.stoodMin !== undefined, lackOf.stood),
    ...(rigless.length > 0 ? [lackOf.rig(listed(rigless))] : []),
    ...(ramless.length > 0 ? [lackOf.ramming(listed(ramless.map(({ name }) => name)))] : []),
    ...(sands.length > 0 && log.batches.every(({ sand }) => sand !== undefined) ? [] : [lackOf.sieving]),
  ];
}
