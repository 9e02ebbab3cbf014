// A notebook: a pure function from a log to a page.

import { invariant } from "../issue.ts";
import type { Log } from "../log/types.ts";
import type { Page, PageSpec } from "./blocks.ts";
import { fileStem } from "./file-name.ts";
import { issuesInUnits } from "./issue-units.ts";
import { plainText } from "./visible.ts";
import { english } from "./words.ts";

export interface Notebook {
  readonly title: string;
  /** What the command line and file names call it: the title in lower case with hyphens, unless said otherwise. */
  readonly name: string;
  /** What it answers, for a list of notebooks. */
  readonly question?: string;
  run(log: Log): Page;
}

/**
 * Makes a notebook of a function. The function gets a log and returns the page's question, answer and sections;
 * title, sources, colophon, issues and figures may be left out. It must be pure: no files, no clock, no state.
 * run throws Misuse where the question does not end with a question mark or a promise comes back. A log that
 * says that it is invented has it said under the page's title and at its foot; the log's name, its fingerprint and
 * its founder stand at the foot as well, unless the page names the fingerprint itself.
 * @example
 * const fineness = notebook("Fineness", (log) => ({
 *   question: "How fine are the sands of this log?",
 *   answer: [`${log.sands.length} sands were sieved.`],
 *   sections: [],
 * }));
 */
export function notebook(
  title: string,
  fn: (log: Log) => PageSpec,
  about: { readonly name?: string; readonly question?: string } = {},
): Notebook {
  return Object.freeze({
    title,
    name: fileStem(about.name ?? title),
    ...(about.question === undefined ? {} : { question: about.question }),
    run: (log: Log) => {
      const named = withoutPlaceholder(log);
      return completed(title, fn(named), named);
    },
  });
}

/** What a new log has in place of a name. */
const PLACEHOLDER = "(your name)";

function withoutPlaceholder(log: Log): Log {
  if (log.founder?.trim().toLowerCase() !== PLACEHOLDER) return log;
  const { founder: _, ...rest } = log;
  return rest;
}

function completed(title: string, spec: PageSpec, log: Log): Page {
  invariant(
    isObject(spec) && ("then" in spec || (Array.isArray(spec.answer) && Array.isArray(spec.sections))),
    `the notebook "${title}" gave no page; its function returns { question, answer: [ ... ], sections: [ ... ] }`,
  );
  invariant(!("then" in spec), `the notebook "${title}" gave a promise; a notebook is a pure function`);
  const page = { sources: [], colophon: [], issues: [], figures: {}, title, ...spec };
  invariant(
    page.question !== undefined && plainText(page.question).trimEnd().endsWith("?"),
    `the question of the notebook "${title}" must end with a question mark`,
  );
  const invented = log.invented || page.invented === true;
  const colophon = [...nameOf(log, page.colophon), ...page.colophon];
  if (invented && !colophon.includes(english.invented())) colophon.push(english.invented());
  return { ...page, invented, colophon, issues: issuesInUnits(page.issues, log) };
}

/** A founder's script may be plain JavaScript, or return nothing. */
const isObject = (value: unknown): boolean => typeof value === "object" && value !== null;

/** Which log the page was made from, so that page and data can be matched; nothing where the page says so itself. */
function nameOf({ file, fingerprint, founder }: Log, colophon: readonly string[]): string[] {
  if (colophon.some((line) => line.includes(fingerprint))) return [];
  return [english.log(file, fingerprint), ...(founder ? [english.keptBy(founder)] : [])];
}
