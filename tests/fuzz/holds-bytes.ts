// A log's file of any bytes, by the whole way of the command "check": an exit code, lines to read, nothing thrown.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { check } from "../../lib/disk/check.ts";
import { consoleOn } from "../../lib/disk/console.ts";
import { claim, type Step } from "./claim.ts";

/** One folder for a run. */
export function checkedFolder(): {
  readonly bytesHold: (bytes: Buffer, step: Step) => Promise<void>;
  readonly done: () => void;
} {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-fuzz-"));
  const path = join(folder, "yard.yaml");
  return {
    async bytesHold(bytes, step) {
      writeFileSync(path, bytes);
      const printed: string[] = [];
      const stream = { write: (text: string) => void printed.push(text) };
      step("check");
      const code = await check(path, consoleOn(stream, stream));
      const out = printed.join("");
      claim(code === 0 || code === 1 || code === 2, `check ends with ${code}`);
      claim(out.endsWith("\n") && out.trim() !== "", "check says nothing");
      // What moves a terminal's cursor or hides text is shown as a code.
      claim(
        !/[\x00-\x08\x0b-\x1f\x7f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/.test(out),
        () => `check prints a control character: ${JSON.stringify(out).slice(0, 200)}`,
      );
      claim(code !== 1 || /error: /.test(out), "check ends with 1 and names no error");
    },
    done: () => rmSync(folder, { recursive: true }),
  };
}
