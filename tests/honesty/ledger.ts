// What was printed with a ± against what was true, figure by figure, over many founders.

import type { PrintedEnds } from "./printed.ts";

export interface Entry {
  readonly notebook: string;
  readonly figure: string;
  /** Intervals with a known truth, and those that held it. */
  asked: number;
  held: number;
  /** Sum of what was promised, %: 95 for each interval, else the chance that the page gives. */
  promised: number;
  /** How far what is kept may lie from what is promised, points. */
  readonly within: number;
  /** The truth lay below the interval, or above it. */
  below: number;
  above: number;
  /** One pair for each founder: what he knows in common he gets wrong in common. */
  readonly founders: Map<number, [asked: number, held: number]>;
  /** Half-width over what the founder sees between his own readings, 1.96 of their standard deviation. */
  readonly widths: number[];
}

export interface Ledger {
  note(what: Noted): void;
  /** Something that was given a chance, in %, and whether it came true. */
  noteChance(what: NotedChance): void;
  entries(): readonly Entry[];
}

export interface Noted {
  readonly founder: number;
  readonly notebook: string;
  readonly figure: string;
  /** Undefined: nothing was printed, or nothing with a ±. */
  readonly ends: PrintedEnds | undefined;
  readonly truth: number;
  /** Standard deviation of a reading as the founder would see it, in the figure's unit. */
  readonly naiveSd?: number;
}

export interface NotedChance extends Pick<Noted, "founder" | "notebook" | "figure"> {
  readonly promised: number;
  readonly within: number;
  readonly kept: boolean;
}

/**
 * Figures with "at least" before their ± are held apart: they promise less. narrowed: each interval so many times as wide
 * about its middle, to see that it would be noticed.
 */
export function ledger(narrowed = 1): Ledger {
  const entries = new Map<string, Entry>();
  const entryOf = (notebook: string, figure: string, within: number): Entry => {
    const key = `${notebook} / ${figure}`;
    const entry = entries.get(key) ?? newEntry(notebook, figure, within);
    entries.set(key, entry);
    return entry;
  };
  const count = (entry: Entry, founder: number, promised: number, held: boolean): void => {
    entry.asked++;
    entry.promised += promised;
    if (held) entry.held++;
    const own = entry.founders.get(founder) ?? [0, 0];
    entry.founders.set(founder, [own[0] + 1, own[1] + Number(held)]);
  };
  return {
    note({ founder, notebook, figure, ends, truth, naiveSd }) {
      if (!ends || !Number.isFinite(truth)) return;
      const entry = entryOf(notebook, ends.atLeast ? `${figure}, at least` : figure, 2);
      const spare = ((ends.high - ends.low) * (1 - narrowed)) / 2;
      const [below, above] = [truth < ends.low + spare, truth > ends.high - spare];
      count(entry, founder, 95, !below && !above);
      if (below) entry.below++;
      if (above) entry.above++;
      if (naiveSd !== undefined && naiveSd > 0)
        entry.widths.push((ends.high - ends.low) / 2 / (1.96 * naiveSd));
    },
    noteChance({ founder, notebook, figure, promised, within, kept }) {
      count(entryOf(notebook, figure, within), founder, promised, kept);
    },
    entries: () => [...entries.values()],
  };
}

const newEntry = (notebook: string, figure: string, within: number): Entry => ({
  notebook,
  figure,
  within,
  promised: 0,
  asked: 0,
  held: 0,
  below: 0,
  above: 0,
  founders: new Map(),
  widths: [],
});

export const heldPercent = ({ held, asked }: Pick<Entry, "held" | "asked">): number => (100 * held) / asked;

export const promisedPercent = ({ promised, asked }: Pick<Entry, "promised" | "asked">): number =>
  promised / asked;

/** Standard error of the percentage, with founders as the independent ones (a ratio's, by its first order). */
export function standardError(entry: Entry): number {
  const share = entry.held / entry.asked;
  let squares = 0;
  for (const [asked, held] of entry.founders.values()) squares += (held - share * asked) ** 2;
  const plain = Math.sqrt((share * (1 - share)) / entry.asked);
  const n = entry.founders.size;
  const clustered = n < 2 ? 0 : Math.sqrt((squares * n) / (n - 1)) / entry.asked;
  return 100 * Math.max(plain, clustered);
}

/** Standard error that the percentage would have if the edge were true, as clustered as the entry is. */
export function errorAtEdge(entry: Entry, edge: number): number {
  const share = entry.held / entry.asked;
  const plain = Math.sqrt((share * (1 - share)) / entry.asked) * 100;
  const design = plain > 0 ? Math.max(1, standardError(entry) / plain) : 1;
  return design * Math.sqrt((edge * (100 - edge)) / entry.asked);
}
