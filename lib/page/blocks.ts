// What a page is made of. Text is data: no block holds markup.

import type { Chart } from "../chart/chart.ts";
import type { Caution, Finding } from "../finding/finding.ts";
import type { Issue, Place } from "../issue.ts";

/** code: what stands in a file, as it is typed. */
export type Inline =
  | string
  | { readonly strong: string }
  | { readonly em: string }
  | { readonly code: string };
export type Text = string | readonly Inline[];

export interface TableColumn {
  readonly head: string;
  /** Unit and basis under the head: "g", "% of dry sand". */
  readonly unit?: string;
  /** Unit of the cells' plain numbers where it is not the one that is printed. */
  readonly dataUnit?: string;
  /** number: aligned at the decimal mark. */
  readonly align: "text" | "number";
  /** How the column is worked out, in plain signs; told on demand under the table. */
  readonly formula?: string;
  /** Where the formula is from. */
  readonly source?: string;
  /** Not printed where no row has anything in it; files keep it. */
  readonly spare?: true;
}
export interface TableCell {
  readonly text: string;
  /** The plain number for CSV and JSON, where the cell shows a rounded one. */
  readonly number?: number;
  /** Of a range without a middle worth printing: its plain ends, in the column's metric unit. */
  readonly ends?: { readonly low: number; readonly high: number };
  /** True: a reading, of which the CSV file keeps ten digits. */
  readonly whole?: boolean;
  /** The ± as it was typed with the reading, in the column's unit, for a column of its own in the CSV file: "0.1 (sd)". */
  readonly plusMinus?: string;
  /** A fault in words, shown at the cell. */
  readonly fault?: string;
  /** Where the reading that it shows stands in the log: the live page edits it there. */
  readonly at?: Place;
}
export type TableRow = readonly (string | TableCell)[];

export interface TableBlock {
  readonly kind: "table";
  /** Short name for the CSV file: lower case, hyphens. */
  readonly name: string;
  readonly caption: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  readonly foot?: readonly TableRow[];
  /** Rows after so many are shown on demand, on the screen; the foot stands under those before. */
  readonly foldAfter?: number;
  /** How figures of the foot are worked out, told with the columns' formulas. */
  readonly footFormulas?: readonly WorkedOut[];
}
/** A column or a figure of the foot, and how it comes about. */
export interface WorkedOut {
  readonly head: string;
  readonly unit?: string;
  readonly formula: string;
  readonly source?: string;
}
export interface ChartBlock {
  readonly kind: "chart";
  readonly chart: Chart;
  /** Drawn on the screen alone: its figures stand in a table beside it. */
  readonly screenOnly?: true;
}
/** Shown on demand; open in print unless it is kept to the screen. Cautions in it are moved out of it: a caution is never folded away. */
export interface FoldBlock {
  readonly kind: "fold";
  readonly summary: string;
  readonly blocks: readonly Block[];
  /** Detail behind what the page says elsewhere: left out on paper. */
  readonly screenOnly?: true;
  /** A card to print: never folded, and alone on its sheet of paper. */
  readonly ownSheet?: true;
}
/** The blocks that every writer shows as they are given. */
export type PlainBlock =
  /** once: an explanation that a page gives where it is first needed, and not again. */
  | { readonly kind: "prose"; readonly text: Text; readonly once?: true }
  | { readonly kind: "list"; readonly items: readonly Text[]; readonly ordered?: boolean }
  /** Lines to copy as they stand: of a log, or of a command. */
  | { readonly kind: "lines"; readonly text: string }
  /** The page's main figures: a label, the figure with its ±, and a line under it. */
  | { readonly kind: "figures"; readonly figures: readonly KeyFigure[] }
  | { readonly kind: "finding"; readonly finding: Finding }
  /** deferralSaid: the page has said whose rules come first, before the first of its cautions. */
  | { readonly kind: "caution"; readonly caution: Caution; readonly deferralSaid?: boolean }
  /** Faults of the log, with their places. */
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

export type Block = PlainBlock | TableBlock | ChartBlock | FoldBlock;

export interface KeyFigure {
  readonly label: string;
  /** "69.1 ± 0.4"; a figure that must not be relied on has weak: true and is never set in bold. */
  readonly figure: string;
  readonly unit?: string;
  /** What the ± holds, or why there is none: one line. */
  readonly under?: string;
  readonly weak?: boolean;
}

/** A page has the shape of a small write-up. Empty sections are left out. */
export interface Page {
  readonly title: string;
  /** What the page answers, in one sentence that ends with a question mark. */
  readonly question: Text;
  /** The answer in one to three sentences, figures first; stands at the top. */
  readonly answer: readonly Text[];
  readonly sections: readonly Section[];
  readonly sources: readonly string[];
  /** True: the log says that it is invented, and so does the page, under its title and at its foot. */
  readonly invented?: boolean;
  /** Small print at the foot: log name, fingerprint, library version. */
  readonly colophon: readonly string[];
  /** Everything that was wrong with the log or found on the way. */
  readonly issues: readonly Issue[];
  /** Plain figures for JSON and for a script: name → value with its ± . */
  readonly figures: { readonly [name: string]: unknown };
  /** Files that travel with the page, each one click away: the log and its sheets. */
  readonly attachments?: readonly Attachment[];
  /** Under the title of a write-up: who, when, which version, of which data. */
  readonly titleBlock?: readonly TitleLine[];
  /** True: the text names its sources by number, "[3]", so they stand in a numbered list. */
  readonly numberedSources?: boolean;
}

export interface TitleLine {
  readonly label: string;
  readonly text: string;
}

/** A text file that a page hands on as it is. */
export interface Attachment {
  /** "one-heap.yaml" */
  readonly name: string;
  readonly text: string;
  /** What it is, in a few words: "the log that this page was made from". */
  readonly says: string;
}

/** What a notebook's function may leave out; a Page has all of it. */
export type PageSpec = Pick<Page, "question" | "answer" | "sections"> & Partial<Page>;

/** The order in which sections stand, whatever order they are given in. */
export type SectionRole = "cautions" | "data" | "result" | "findings" | "next";

export interface Section {
  readonly role: SectionRole;
  readonly title: string;
  readonly blocks: readonly Block[];
}
