// The batches of a log as they were read last, for the next reading after an edit.

import type { Batch } from "./batch.ts";
import type { Entry, LogNode, PlacedComplaint, Report } from "./node.ts";
import { type Shift, shiftedPlace } from "./node-shift.ts";
import type { PieceMemory } from "./parse-pieces.ts";
import { carryRecipe } from "./recipe-figures.ts";
import { relocated } from "./relocated.ts";
import { carryFigures } from "./test-figure.ts";

interface KnownBatch {
  readonly surroundings: Surroundings;
  readonly spoiled: boolean;
  readonly batch: Batch | undefined;
  readonly complaints: readonly PlacedComplaint[];
}

/** What a batch's reading hangs on beside its own lines. */
interface Surroundings {
  readonly scales: LogNode | undefined;
  readonly rigs: LogNode | undefined;
  readonly sands: readonly string[];
}

interface Context {
  readonly instruments: {
    readonly scaleSection: LogNode | undefined;
    readonly rigSection: LogNode | undefined;
  };
  readonly sands: readonly string[];
  readonly reportAbout: (name: string) => Report;
}

export interface BatchMemory {
  /** Reads by `read`, or gives what that gave for the same lines in the same log, and reports it again. */
  recall(entry: Entry, spoiled: boolean, context: Context, read: ReadBatch): Batch | undefined;
}
type ReadBatch = (report: Report) => Batch | undefined;

export function batchMemory({ movedFrom }: Pick<PieceMemory, "movedFrom">): BatchMemory {
  const known = new WeakMap<Entry, KnownBatch>();
  const alike = (one: KnownBatch | undefined, now: Surroundings, spoiled: boolean): one is KnownBatch =>
    one !== undefined &&
    one.spoiled === spoiled &&
    one.surroundings.scales === now.scales &&
    one.surroundings.rigs === now.rigs &&
    one.surroundings.sands.join("\n") === now.sands.join("\n");
  return {
    recall(entry, spoiled, { instruments, sands, reportAbout }, read) {
      const now = { scales: instruments.scaleSection, rigs: instruments.rigSection, sands };
      const report = reportAbout(entry.key.trim());
      const before = known.get(entry);
      if (alike(before, now, spoiled)) {
        for (const { complaint, place } of before.complaints) report(complaint, place);
        return before.batch;
      }
      const from = movedFrom.get(entry);
      const there = from && known.get(from.entry);
      // A complaint may name the line of another.
      if (from && alike(there, now, spoiled) && there.complaints.length === 0 && there.batch) {
        const batch = movedBatch(there.batch, from.by);
        known.set(entry, { ...there, batch });
        return batch;
      }
      const complaints: PlacedComplaint[] = [];
      const batch = read((complaint, place) => {
        complaints.push({ complaint, place });
        report(complaint, place);
      });
      known.set(entry, { surroundings: now, spoiled, batch, complaints });
      return batch;
    },
  };
}

/** Its rigs and scales stand elsewhere, and have not moved. */
function movedBatch(batch: Batch, by: Shift): Batch {
  const elsewhere = new Set<object>();
  for (const one of [batch.recipe?.scale, ...batch.readings.flatMap(({ rig, scale }) => [rig, scale])])
    if (one) elsewhere.add(one);
  const moved = relocated(batch, (place) => shiftedPlace(place, by), elsewhere);
  carryFigures(batch, moved);
  carryRecipe(batch, moved);
  return moved;
}
