// Runs cases of one kind, batch by batch, each with a seed of its own; a case that fails is made smaller.

import fc from "fast-check";
import type { FuzzKind } from "./kinds.ts";
import type { Texts } from "./texts.ts";

export interface Failure {
  readonly kind: string;
  /** Of its batch: FUZZ_SEED with the kind's name repeats it. */
  readonly seed: number;
  readonly step: string;
  readonly message: string;
  readonly texts: Texts;
}

export interface Batch {
  readonly seed: number;
  readonly cases: number;
}

export interface Watch {
  /** Before each step of each case. */
  step(name: string, texts: Texts): void;
  /** After each case. */
  over(texts: Texts): void;
}

/** Undefined where all cases hold. */
export async function runBatch(
  kind: FuzzKind,
  { seed, cases }: Batch,
  watch: Watch,
): Promise<Failure | undefined> {
  let last = "";
  const property = fc.asyncProperty(kind.cases, async (texts) => {
    let at = "";
    try {
      await kind.holds(texts, (name) => {
        at = name;
        watch.step(name, texts);
      });
    } catch (error) {
      // The smallest case is the last that fails, not the last that is tried.
      last = at;
      throw error;
    }
    watch.over(texts);
  });
  const result = await fc.check(property, { seed, numRuns: cases, interruptAfterTimeLimit: 120_000 });
  if (!result.failed || result.counterexample === null) return undefined;
  const error = result.errorInstance;
  const message = error instanceof Error ? `${error.message}\n${placeOf(error)}` : String(error);
  return { kind: kind.name, seed, step: last, message, texts: result.counterexample[0] };
}

/** The first lines of the stack that are ours. */
function placeOf(error: Error): string {
  const lines = (error.stack ?? "")
    .split("\n")
    .filter((line) => /\/(lib|notebooks|node_modules\/(yaml|mathjs))\//.test(line));
  return lines
    .slice(0, 4)
    .map((line) => line.trim().replace(/\(?file:.*\/(?=lib\/|notebooks\/|node_modules\/)/, "("))
    .join("\n");
}
