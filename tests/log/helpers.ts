// A small invented log to spoil, and what the log says about it.

import { type Issue, issueText } from "../../lib/issue.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { Log } from "../../lib/log/types.ts";

/** Invented figures; the third sieving's masses add up to its start mass. */
export const soundLog = `format: 1
title: An invented log
invented: yes
metal: aluminium
bond: bentonite
scales:
  small scale: { reads to: 0.01 g, within: 0.02 g }
sieve sets:
  home stack: { frame: 200 mm, checked: no }
sands:
  Dune sand:
    state: new
    sievings:
      - date: 2026-03-02
        portion: A
        scale: small scale
        sieve set: home stack
        washed: no
        start: 50.0 g
        retained:
          No. 40: 3.20
          No. 50: 12.60
          No. 70: 20.10
          No. 100: 12.00
          No. 140: 1.90
          pan: 0.15
  Pit sand:
    state: used
    sievings:
      - date: 2026-03-03
        scale: small scale
        sieve set: home stack
        start: 40.0 g
        retained:
          No. 50: 10.00
          No. 70: 20.00
          No. 100: 9.50
          pan: 0.40
`;

export function read(text: string, files: Readonly<Record<string, string>> = {}) {
  return readLog(text, { name: "log.yaml", files });
}

/** The sound log with one piece of text put in another's place. */
export function spoilt(from: string | RegExp, to: string, files: Readonly<Record<string, string>> = {}) {
  const text = soundLog.replace(from, () => to);
  if (text === soundLog) throw new Error(`${from} is not in the sound log`);
  return { text, ...read(text, files) };
}

export function issueOf(result: { readonly issues: readonly Issue[] }, code: string): Issue {
  const found = result.issues.find((issue) => issue.code === code);
  if (found) return found;
  throw new Error(`No ${code} among:\n${result.issues.map(issueText).join("\n")}`);
}

/** "line:column code" of each issue that is more than a note. */
export function brief(issues: readonly Issue[]): string[] {
  return issues
    .filter((issue) => issue.severity !== "note")
    .map(({ code, place }) => `${place?.line}:${place?.column} ${code}`);
}

export function sandNamed(log: Log | undefined, name: string) {
  return log?.sands.find((sand) => sand.name === name);
}
