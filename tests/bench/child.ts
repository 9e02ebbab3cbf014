// A node of its own, and what it used.

import { spawnSync } from "node:child_process";
import { join } from "node:path";

export interface Used {
  /** Processor time of the whole process: what else the machine does hardly changes it. */
  readonly ms: number;
  /** From start to exit on the clock. */
  readonly wallMs: number;
  /** The most memory that it ever held. */
  readonly mb: number;
  readonly printed: string;
}

const tell = join(import.meta.dirname, "child-use.cjs");

/** Throws where it does not end well. */
export function used(args: readonly string[], input?: string): Used {
  const start = performance.now();
  const { status, output } = spawnSync(process.execPath, ["--require", tell, ...args], {
    encoding: "utf8",
    stdio: ["pipe", "pipe", "pipe", "pipe"],
    maxBuffer: 1 << 28,
    ...(input === undefined ? {} : { input }),
  });
  const wallMs = performance.now() - start;
  if (status !== 0) throw new Error(`node ${args.join(" ")} ended with ${status}: ${output[2]}`);
  return { ...(JSON.parse(output[3]!) as { ms: number; mb: number }), wallMs, printed: output[1]! };
}
