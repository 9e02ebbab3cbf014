// A published figure beside what the library computes from the same input, and how the two are held together.

import { digits } from "./nist-data.ts";
import type { Source } from "./sources.ts";

export const tags = [
  "read",
  "from memory",
  "misprint",
  "common practice",
  "by hand",
  "derived",
  "apart",
  "computed there",
] as const;
export type Tag = (typeof tags)[number];

/** How far the two agree. Left out: every number to all the digits that are printed, every text letter for letter. */
export type Agreement =
  /** Each to so many leading digits at least. */
  | { readonly digits: number }
  /** Each within so much, in the unit of the figure; a function where the scatter of simulated rows says how much. */
  | { readonly within: number | (() => number) }
  /** Each within such a share of it. */
  | { readonly share: number }
  /** All of theirs lie between our two figures, or ours between their two. */
  | { readonly between: "ours" | "theirs" }
  /** None of theirs lies between our two figures: what we say does not hold there, and must not claim to. */
  | { readonly beyond: "ours" }
  /** The printed figure does not follow from its own input; this does. */
  | { readonly instead: readonly string[] };

export interface Published {
  readonly figure: string;
  /** None: worked out here, from a definition. */
  readonly source?: Source | readonly Source[];
  /** As printed, with its last zeros. */
  readonly theirs: readonly string[];
  /** Worked out anew by the library from the published input; never copied. */
  readonly ours: () => readonly (number | string)[];
  readonly agree?: Agreement;
  /** How theirs was come by; where its parts differ, the weakest of them. */
  readonly tag: Tag;
  readonly note?: string;
}

export interface Section {
  readonly title: string;
  /** The file that declares the rows. */
  readonly file: string;
  readonly rows: readonly Published[];
}

export interface Judged {
  readonly row: Published;
  readonly ours: readonly (number | string)[];
  /** In words, for the table. */
  readonly agreed: string;
  /** What does not hold; none where the row stands. */
  readonly faults: readonly string[];
}

interface Printed {
  readonly value: number;
  readonly digits: number;
  /** One unit of its last digit. */
  readonly step: number;
}

/** A number as printed, thousands parted by spaces; undefined for a text. */
export function printed(text: string): Printed | undefined {
  const plain = text.replace("−", "-").replaceAll(" ", "");
  const parts = /^-?(\d+)(?:\.(\d+))?(?:e([-+]?\d+))?$/.exec(plain);
  if (!parts) return undefined;
  const [, whole = "", fraction = "", power = "0"] = parts;
  const significant = `${whole}${fraction}`.replace(/^0+/, "");
  return {
    value: Number(plain),
    digits: Math.max(1, significant.length),
    step: Number(`1e${Number(power) - fraction.length}`),
  };
}

/** Rounds to the printed figure. The hair is what binary numbers put on a tie. */
const toTheDigit = (ours: number, { value, step }: Printed): boolean =>
  Math.abs(ours - value) <= step * (0.5 + 1e-9) + Math.abs(value) * 1e-15;

/** Leading digits that agree, whole, and never more than are printed; a hair below a whole digit is not given away. */
function agreeing(ours: number, theirs: Printed): number {
  if (toTheDigit(ours, theirs)) return theirs.digits;
  return Math.max(0, Math.min(theirs.digits, Math.floor(digits(ours, theirs.value) - 0.01)));
}

export function judge(row: Published): Judged {
  const ours = row.ours();
  const misprint = row.agree !== undefined && "instead" in row.agree;
  if (misprint !== (row.tag === "misprint"))
    return { row, ours, agreed: "", faults: ["a misprint says what stands instead, and nothing else does"] };
  if (row.agree && "between" in row.agree) return judgeBetween(row, ours, row.agree.between);
  if (row.agree && "beyond" in row.agree) return judgeBeyond(row, ours);
  const against = row.agree && "instead" in row.agree ? row.agree.instead : row.theirs;
  const faults = against.length === ours.length ? [] : [`${against.length} figures against ${ours.length}`];
  against.forEach((text, k) => {
    const mine = ours[k];
    if (mine !== undefined && !holds(mine, text, row.agree)) faults.push(`theirs ${text}, ours ${mine}`);
  });
  if (misprint && row.theirs.every((text, k) => ours[k] !== undefined && holds(ours[k], text, undefined)))
    faults.push("said to be a misprint, and follows from its input all the same");
  return { row, ours, agreed: inWords(row, ours), faults };
}

function holds(mine: number | string, text: string, agree: Agreement | undefined): boolean {
  const theirs = printed(text);
  if (typeof mine === "string" || !theirs) return mine === text;
  if (!Number.isFinite(mine)) return false;
  const off = Math.abs(mine - theirs.value);
  if (agree && "digits" in agree)
    return toTheDigit(mine, theirs) || digits(mine, theirs.value) >= agree.digits;
  if (agree && "within" in agree)
    return off <= (typeof agree.within === "number" ? agree.within : agree.within());
  if (agree && "share" in agree) return off <= agree.share * Math.abs(theirs.value);
  return toTheDigit(mine, theirs);
}

function judgeBetween(row: Published, ours: readonly (number | string)[], whose: "ours" | "theirs"): Judged {
  const numbers = { ours: ours.map(Number), theirs: row.theirs.map((text) => printed(text)?.value ?? NaN) };
  const ends = numbers[whose];
  const inner = numbers[whose === "ours" ? "theirs" : "ours"];
  const faults = ends.length === 2 ? [] : ["a span has two ends"];
  for (const value of inner)
    if (!(ends[0]! <= value && value <= ends[1]!)) faults.push(`${value} outside ${ends.join(" to ")}`);
  return { row, ours, agreed: whose === "ours" ? "theirs inside ours" : "ours inside theirs", faults };
}

function judgeBeyond(row: Published, ours: readonly (number | string)[]): Judged {
  const [low, high] = ours.map(Number);
  const faults = ours.length === 2 ? [] : ["a span has two ends"];
  for (const text of row.theirs) {
    const value = printed(text)?.value ?? NaN;
    if (!(value < low! || value > high!)) faults.push(`${text} within ${low} to ${high}`);
  }
  return { row, ours, agreed: "theirs beyond ours", faults };
}

function inWords(row: Published, ours: readonly (number | string)[]): string {
  const each = row.theirs.flatMap((text, k) => {
    const theirs = printed(text);
    const mine = ours[k];
    if (!theirs || typeof mine !== "number") return [];
    // Where digits are stated, those are told: what lies beyond them is the machine's.
    const found = agreeing(mine, theirs);
    const stated = row.agree && "digits" in row.agree ? row.agree.digits : found;
    return [{ of: theirs.digits, agreed: Math.min(found, stated) }];
  });
  if (each.length === 0) return "word for word";
  const least = each.reduce((a, b) => (b.agreed - b.of < a.agreed - a.of ? b : a));
  if (least.agreed < least.of) return `${least.agreed} of ${least.of}`;
  const counts = each.map(({ of }) => of);
  const [low, high] = [Math.min(...counts), Math.max(...counts)];
  return low === high ? `all ${low}` : `all ${low} to ${high}`;
}
