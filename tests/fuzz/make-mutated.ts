// Demo logs, whole or some of their sections, with slips of the hand.

import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { beginLog, beginnings } from "../../lib/log/begin.ts";
import type { Dice } from "./dice.ts";
import { logName } from "./make-log.ts";
import { hostile } from "./make-scalars.ts";
import type { Texts } from "./texts.ts";

const folder = join(import.meta.dirname, "../../data-demo");
const read = (path: string): string => readFileSync(path, "utf8");
const paths = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .sort()
  .map((path) => join(folder, path));
const logs: readonly string[] = [
  ...paths.filter((path) => path.endsWith(".yaml")).map(read),
  ...beginnings.map(({ name }) => beginLog(name)),
  beginLog(),
];
const csvFiles: Texts = paths
  .filter((path) => path.endsWith(".csv") && dirname(path) !== folder)
  .map((path) => ({ name: basename(path), text: read(path) }));

/** Each section with what hangs below it. */
const sections = logs.map((log) => log.split(/^(?=[A-Za-z])/m));

export function mutatedLog(dice: Dice): Texts {
  const parts = dice.pick(sections);
  const kept = dice.chance(8)
    ? parts
    : parts.flatMap((part) => (part.startsWith("format") || dice.chance(60) ? thinned(dice, part) : []));
  if (dice.chance(15)) kept.push(thinned(dice, dice.pick(dice.pick(sections))));
  let text = kept.join("");
  for (let k = dice.pick([0, 0, 1, 1, 2, 3, 6]); k > 0; k--) text = slipped(dice, text);
  const files = csvFiles
    .filter(({ name }) => text.includes(name) && !dice.chance(5))
    .map(({ name, text: rows }) => {
      const short = rows
        .split("\n")
        .filter((_, k) => k === 0 || dice.chance(15))
        .join("\n");
      return { name, text: dice.chance(50) ? short : slipped(dice, short) };
    });
  return [{ name: logName, text }, ...files];
}

/** A long section by some of its lines and entries, so that most cases stay small. */
function thinned(dice: Dice, part: string): string {
  const entries = part.split(/^(?= {2}\S)/m);
  if (entries.length < 4) return part;
  const share = Math.max(10, Math.round(350 / entries.length));
  return entries.filter((_, k) => k === 0 || dice.chance(share)).join("");
}

/** One slip: a line lost, doubled, moved or indented; a value or a key changed; signs put in or taken out. */
export function slipped(dice: Dice, text: string): string {
  const lines = text.split("\n");
  const at = dice.integer(0, lines.length - 1);
  const line = lines[at]!;
  const rejoin = (...put: readonly string[]): string =>
    [...lines.slice(0, at), ...put, ...lines.slice(at + 1)].join("\n");
  const char = dice.integer(0, text.length);
  const values = [...text.matchAll(/(?<=[:,] )[^\s,{}[\]#][^,{}[\]#\n]*/g)];
  const value = values.length > 0 ? dice.pick(values) : undefined;
  const valueBy = (put: string): string =>
    value ? text.slice(0, value.index) + put + text.slice(value.index + value[0].length) : text;
  return dice.pick<() => string>([
    () => rejoin(),
    () => rejoin(line, line),
    () => rejoin(`${dice.pick(["  ", " ", "\t", "    ", "- "])}${line}`),
    () => rejoin(line.replace(/^ {1,2}/, "")),
    () => rejoin(line.replace(":", dice.pick(["", " ", "::", "=", " :", ":x"]))),
    () => rejoin(line, dice.pick(lines)),
    () => valueBy(dice.pick(hostile)),
    () => valueBy(dice.pick(hostile)),
    () => valueBy(dice.pick(hostile)),
    () => valueBy(values.length > 0 ? dice.pick(values)[0] : ""),
    () => valueBy(""),
    () =>
      text.slice(0, char) +
      dice.pick([..."{}[]:,-#&*!|>'\"%@`?~\t\n\r .±0\u00a0\u0000\ufeff“”"]) +
      text.slice(char),
    () => text.slice(0, char) + text.slice(char + dice.integer(1, 20)),
    () => text.slice(0, char),
    () =>
      text.replace(/\d+(?:\.\d+)?/g, (digits) =>
        dice.chance(4)
          ? dice.pick(["0", "-1", "1e9", "1e-9", digits.replace(".", ","), `${digits}${digits}`])
          : digits,
      ),
  ])();
}
