// numpy as the peer, in a process of its own that stays warm.

import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";

export interface Numpy {
  readonly version: string;
  /** Mean and 95 % limits of its last draws, to see that both work out the same. */
  readonly last: () => readonly number[];
  milliseconds(): Promise<number>;
  close(): void;
}

/** Undefined where there is no python3 with numpy. */
export async function openNumpy(masses: readonly number[], sd: number): Promise<Numpy | undefined> {
  if (spawnSync("python3", ["-c", "import numpy"]).status !== 0) return undefined;
  const script = join(import.meta.dirname, "numpy-draws.py");
  const child = spawn("python3", [script, masses.join(","), String(sd)], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  let last: readonly number[] = [];
  let version = "";
  const ask = async (): Promise<number> => {
    child.stdin.write("\n");
    const [took, mean, low, high, name] = String((await lines.next()).value).split(" ");
    last = [mean, low, high].map(Number);
    version = name ?? "";
    return Number(took);
  };
  await ask();
  return { version, last: () => last, milliseconds: ask, close: () => void child.stdin.end() };
}
