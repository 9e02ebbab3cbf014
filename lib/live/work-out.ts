// One working out of a live page: from texts to the page's parts, then the drawings that changed, what is seen first,
// what the window does not show last.

import { chartSvgWithoutCode } from "../chart/svg.ts";
import type { Issue } from "../issue.ts";
import type { LogText } from "../log/types.ts";
import type { Page } from "../page/blocks.ts";
import { chartsIn, restOf, type ToDraw, toDraw, undrawn } from "../page/drawing.ts";
import { drawingAt } from "../page/html-blocks.ts";
import { type HtmlParts, htmlParts } from "../page/html-parts.ts";
import { issuesInUnits } from "../page/issue-units.ts";
import { layOut } from "../page/lay-out.ts";
import type { Notebook } from "../page/notebook.ts";
import { checkedIssues, readTexts } from "./read-texts.ts";
import { undrawable } from "./undrawable.ts";

export interface Wanted {
  /** Counts up; a later one makes earlier ones idle. */
  readonly id: number;
  readonly texts: readonly LogText[];
  /** Which drawings the window shows. */
  readonly shows: "wide" | "narrow";
  /** Numbers of the figures that are in view. */
  readonly inView: readonly number[];
  /** True: what a check tells of the log is wanted as well. */
  readonly check: boolean;
  /** Keys of the drawings that are on the page already. */
  readonly drawn: readonly string[];
}

/** A drawing with its key, as markup for its place. */
export interface Drawn {
  readonly key: string;
  readonly html: string;
}

export type Told =
  /** The page with the drawings that are in view: these belong together and are shown at once. */
  | {
      readonly kind: "page";
      readonly id: number;
      readonly title: string;
      readonly parts: HtmlParts;
      readonly drawings: readonly Drawn[];
      /** Where they were asked for. */
      readonly issues?: readonly Issue[];
    }
  /** Of the page just told, what nobody sees at once; it always follows. */
  | { readonly kind: "rest"; readonly id: number; readonly figures: readonly FigureRest[] }
  /** With the drawings that are out of view everything that the window can show is right. */
  | { readonly kind: "done"; readonly id: number; readonly drawings: readonly Drawn[]; readonly ms: Times }
  /** One for the other width. */
  | { readonly kind: "drawing"; readonly id: number; readonly drawing: Drawn }
  /** So are the drawings for the other width. */
  | { readonly kind: "drawn"; readonly id: number }
  /** No page comes of the texts. */
  | { readonly kind: "none"; readonly id: number; readonly issues: readonly Issue[] }
  /** The notebook threw. */
  | { readonly kind: "fault"; readonly id: number; readonly message: string };

/** The key of a figure's drawing at the width that does not show, and what is told of the places in both. */
export interface FigureRest {
  readonly number: number;
  readonly width: ToDraw["width"];
  readonly key: string;
  readonly readings: string;
}

/** Where the time went, ms. */
export interface Times {
  readonly read: number;
  readonly run: number;
  readonly html: number;
  readonly drawings: number;
}

export interface Bench {
  readonly notebook: Pick<Notebook, "run">;
  readonly tell: (told: Told) => void;
  /** Lets whatever came in meanwhile be heard; true where something newer is wanted. */
  readonly idle: (id: number) => Promise<boolean>;
  readonly cache: DrawingCache;
}

export async function workOut(wanted: Wanted, { notebook, tell, idle, cache }: Bench): Promise<void> {
  const { id, texts, check, shows, inView } = wanted;
  const clock = laps();
  const { log, readIssues } = readTexts(texts);
  const read = clock();
  if (log === undefined) return tell({ kind: "none", id, issues: readIssues });
  let page: Page;
  try {
    page = notebook.run(log);
  } catch (error) {
    return tell({ kind: "fault", id, message: error instanceof Error ? error.message : String(error) });
  }
  const run = clock();
  const laid = layOut({ ...page, issues: [...issuesInUnits(readIssues, log), ...page.issues] });
  const charts = chartsIn(laid).map((block) => ({ block, shown: toDraw(block, shows) }));
  const parts = htmlParts(laid, undrawn(charts), true);
  const html = clock();
  if (await idle(id)) return;
  const known = new Set(wanted.drawn);
  const changed = (all: readonly ToDraw[]) => all.filter(({ key }) => !known.has(key));
  const shown = changed(charts.map((chart) => chart.shown));
  const first = shown.filter(({ number }) => inView.includes(number));
  const later = shown.filter(({ number }) => !inView.includes(number));
  /** Undefined where something newer is wanted meanwhile. */
  const drawn = async (all: readonly ToDraw[]): Promise<readonly Drawn[] | undefined> => {
    const made: Drawn[] = [];
    for (const one of all) {
      made.push(await cache.draw(one));
      if (await idle(id)) return undefined;
    }
    return made;
  };
  const drawings = await drawn(first);
  if (!drawings) return;
  const issues = check ? { issues: checkedIssues({ log, readIssues }) } : {};
  tell({ kind: "page", id, title: laid.title, parts, drawings, ...issues });
  // While the page puts that in.
  const rest = charts.map((chart) => restOf(chart.block, chart.shown));
  const figures = rest.map(({ other: { number, width, key }, readings }) => ({
    number,
    width,
    key,
    readings,
  }));
  tell({ kind: "rest", id, figures });
  // Together, for the page is laid out anew after each that comes alone.
  const others = await drawn(later);
  if (!others) return;
  tell({ kind: "done", id, drawings: others, ms: { read, run, html, drawings: clock() } });
  for (const one of changed(rest.map(({ other }) => other))) {
    if (await idle(id)) return;
    tell({ kind: "drawing", id, drawing: await cache.draw(one) });
  }
  tell({ kind: "drawn", id });
}

export interface DrawingCache {
  draw(one: ToDraw): Promise<Drawn>;
}

/** Drawings kept for the way back: an undone edit needs no drawing. */
const KEPT = 60;

export function drawingCache(): DrawingCache {
  const kept = new Map<string, string>();
  return {
    async draw({ key, spec, width, number }) {
      const html = kept.get(key) ?? (await markup(spec, width, number));
      kept.delete(key);
      kept.set(key, html);
      if (kept.size > KEPT) kept.delete(kept.keys().next().value!);
      return { key, html };
    },
  };
}

/** A chart that cannot be drawn costs its own place alone. */
async function markup(spec: ToDraw["spec"], width: ToDraw["width"], number: number): Promise<string> {
  try {
    return drawingAt(await chartSvgWithoutCode(spec), width, number);
  } catch (error) {
    return undrawable(error instanceof Error ? error.message : String(error));
  }
}

/** Each call gives the milliseconds since the last. */
function laps(): () => number {
  let last = performance.now();
  return () => {
    const now = performance.now();
    const lap = now - last;
    last = now;
    return lap;
  };
}
