// What a command says: results to stdout, messages to stderr, progress to a terminal only.

import { visible } from "../page/visible.ts";
import { asCalled } from "./called.ts";
import type { Refusal } from "./refusal.ts";

/** 0: good. 1: the data have errors. 2: the call is wrong, or a file or a founder's script is; nothing was written. */
export type ExitCode = 0 | 1 | 2;

export interface Console {
  /** What was asked for: lists, paths of written files. */
  result(text: string): void;
  /** What a reader should know besides. */
  say(text: string): void;
  /** One line that the next one replaces; "" takes it away. */
  progress(text: string): void;
}

interface Stream {
  write(text: string): unknown;
  readonly isTTY?: boolean;
}

/**
 * Text of a log can hold what moves a terminal's cursor: it is shown as codes. Commands in a message begin with
 * "mullbook"; they are shown as this run was called, so that they can be copied.
 */
export function consoleOn(out: Stream, err: Stream, call = "mullbook"): Console {
  let shown = 0;
  const progress = (text: string) => {
    if (err.isTTY !== true) return;
    err.write(`\r${text.padEnd(shown)}${text === "" ? "\r" : ""}`);
    shown = text.length;
  };
  const line = (stream: Stream, text: string) => {
    if (shown > 0) progress("");
    stream.write(`${visible(asCalled(text, call))}\n`);
  };
  return { result: (text) => line(out, text), say: (text) => line(err, text), progress };
}

/** Says why not, and what to do. */
export function refuse(console: Console, { refused, remedy }: Refusal): 2 {
  console.say(`mullbook: ${refused}`);
  if (remedy !== undefined) console.say(`    ${remedy.replaceAll("\n", "\n    ")}`);
  return 2;
}
