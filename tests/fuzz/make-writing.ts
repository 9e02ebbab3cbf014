// Parts of a log to YAML: blocks or brackets, quotes or none, comments, blank lines, odd indents, anchors and repeats.

import type { Dice } from "./dice.ts";
import type { Part } from "./make-parts.ts";

interface Style {
  /** In a hundred. */
  readonly flow: number;
  readonly noise: number;
  readonly step: number;
  /** Anchors put and repeated. */
  readonly anchors: number;
}

export function styleOf(dice: Dice, wrong: number): Style {
  return {
    flow: dice.pick([0, 20, 50, 100]),
    noise: dice.pick([0, 0, 3, 10]),
    step: dice.pick([2, 2, 2, 4, 1, 3]),
    anchors: wrong > 0 && dice.chance(15) ? 6 : 0,
  };
}

/** Needs quotes in YAML, in blocks or within brackets; texts with quotes of their own are left as they are. */
const wantsQuotes = (text: string): boolean =>
  /^[\s"'&*!|>%@`?#,[\]{}-]|: |:$| #|[,[\]{}]/.test(text) && !/^["']/.test(text);

/** A right text gets the quotes that it needs; a hostile one mostly stands as it is. */
function scalarText(dice: Dice, text: string, raw: boolean): string {
  if (text === "" || !wantsQuotes(text) || raw) return text;
  return dice.chance(50) ? `"${text.replace(/["\\]/g, "\\$&")}"` : `'${text.replaceAll("'", "''")}'`;
}

export function written(dice: Dice, part: Part, style: Style, wrong: number, indent = 0): string {
  if (indent > 0 && style.anchors > 0 && dice.chance(style.anchors)) {
    const name = `a${dice.integer(1, 3)}`;
    if (dice.chance(50)) return ` *${name}`;
    return ` &${name}${written(dice, part, { ...style, anchors: 0 }, wrong, indent)}`;
  }
  const raw = wrong > 0 && dice.chance(70);
  if (part.kind === "text") return part.text === "" ? "" : ` ${scalarText(dice, part.text, raw)}`;
  const empty = part.kind === "map" ? part.entries.length === 0 : part.items.length === 0;
  if (empty || (indent > 0 && dice.chance(style.flow))) return ` ${inBrackets(dice, part, raw)}`;
  const pad = " ".repeat(indent * style.step);
  const lines =
    part.kind === "map"
      ? part.entries.map(([key, value]) => `${pad}${key}:${written(dice, value, style, wrong, indent + 1)}`)
      : part.items.map(
          (item) => `${pad}- ${written(dice, item, { ...style, flow: 100 }, wrong, indent + 1).trimStart()}`,
        );
  return `${indent === 0 ? "" : "\n"}${lines.map((line) => noisy(dice, line, style, pad)).join("\n")}`;
}

function inBrackets(dice: Dice, part: Part, raw: boolean): string {
  if (part.kind === "text") return scalarText(dice, part.text, raw);
  const pad = dice.chance(70) ? " " : "";
  const join = dice.chance(3) ? ",\n      " : ", ";
  if (part.kind === "map")
    return `{${pad}${part.entries.map(([key, value]) => `${key}: ${inBrackets(dice, value, raw)}`).join(join)}${pad}}`;
  return `[${pad}${part.items.map((item) => inBrackets(dice, item, raw)).join(join)}${pad}]`;
}

function noisy(dice: Dice, line: string, { noise }: Style, pad: string): string {
  if (!dice.chance(noise)) return line;
  return dice.pick([`${line}   # said`, `${line}\n`, `${pad}# between\n${line}`, `${line}  `, `\n\n${line}`]);
}
