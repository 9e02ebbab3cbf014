// mullbook open as a process that is told to stop once it has printed its address.

import { spawn } from "node:child_process";
import { asFounder, main, type Run } from "./mullbook.ts";

export function openedAndStopped(words: readonly string[], { cwd }: { readonly cwd: string }): Promise<Run> {
  const started = performance.now();
  const child = spawn(process.execPath, [main, "open", ...words], { cwd, env: asFounder() });
  const said = { out: "", err: "" };
  child.stdout.on("data", (part) => {
    said.out += part;
    child.kill("SIGTERM");
  });
  child.stderr.on("data", (part) => {
    said.err += part;
  });
  return new Promise((resolve) =>
    child.on("close", (code) => resolve({ code, ...said, seconds: (performance.now() - started) / 1000 })),
  );
}
