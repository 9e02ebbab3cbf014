// Which readings of a test stand on one scale, and which of them most batches of a log have.

import type { Batch, TestName } from "./batch.ts";
import { testNames } from "./test-forms.ts";

/** Stands for a drying method that is not said: such a moisture is compared with none that is. */
const unsaid = "a method that is not said";

/**
 * Readings of one kind may be compared. Moisture: by drying method. Compactability: rammed, by height or by weighing,
 * against pressed; what is not said counts as rammed. Permeability: by rig method; what is not said joins the most.
 * Other tests have one kind. Undefined: joins the most.
 */
export function kindOf(test: TestName, method: string | undefined): string | undefined {
  if (test === "moisture") return method ?? unsaid;
  if (test === "compactability") return method === "pressed" ? "pressed" : "rammed";
  return method;
}

/** The kind of each test that was done: the one that most batches have, of equally many the first in the log. */
export function mainKinds(batches: readonly Batch[]): ReadonlyMap<TestName, string | undefined> {
  const main = new Map<TestName, string | undefined>();
  for (const test of testNames) {
    const counts = new Map<string, number>();
    let done = false;
    for (const { readings } of batches) {
      const own = readings.filter((reading) => reading.test === test);
      done ||= own.length > 0;
      const kinds = own.flatMap(({ method }) => kindOf(test, method) ?? []);
      for (const kind of new Set(kinds)) counts.set(kind, (counts.get(kind) ?? 0) + 1);
    }
    const [most] = [...counts].sort((a, b) => b[1] - a[1]);
    if (done) main.set(test, most?.[0]);
  }
  return main;
}
