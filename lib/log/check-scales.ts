// Weighings on a scale that is not named: told once for each rig, or for what has no rig once for each test.

import type { Batch, TestReading } from "./batch.ts";
import { scaleUnnamed } from "./complaints-agreement.ts";
import type { Report } from "./node.ts";
import { readingInputs } from "./reading-inputs.ts";

export function checkScales(batches: readonly Batch[], reportAbout: (name: string) => Report): void {
  const without = new Map<string, { batch: Batch; reading: TestReading; count: number }>();
  for (const batch of batches) {
    for (const reading of batch.readings) {
      if (reading.scale || reading.worked || !isWeighed(reading)) continue;
      const where = reading.rig ? `with the ${reading.rig.name}` : `for ${reading.test}`;
      const before = without.get(where);
      if (before) before.count++;
      else without.set(where, { batch, reading, count: 1 });
    }
  }
  for (const [where, { batch, reading, count }] of without) {
    const readings = count === 1 ? "1 reading" : `${count} readings`;
    reportAbout(batch.name)(scaleUnnamed(where, readings), reading.place);
  }
}

/** True where a mass of it has no ± of its own. */
function isWeighed(reading: TestReading): boolean {
  const inputs = readingInputs(reading)?.inputs ?? [];
  return inputs.some(
    ({ role, measured }) => (role === "weighing" || role === "load") && measured && !measured.plusMinus,
  );
}
