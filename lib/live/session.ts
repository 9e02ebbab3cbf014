// A log that is being changed: its texts, the way back and forth, what is tried, and the page that comes of it.

import { type Issue, invariant, type Place } from "../issue.ts";
import type { LogEdit } from "../log/edit-types.ts";
import { holds } from "../log/source.ts";
import type { Log, LogText } from "../log/types.ts";
import type { Page } from "../page/blocks.ts";
import { issuesInUnits } from "../page/issue-units.ts";
import type { Notebook } from "../page/notebook.ts";
import { checkedIssues, type ReadTexts, readTexts } from "./read-texts.ts";
import { type Splice, splicesBetween } from "./splice.ts";
import { difference, newSteps } from "./steps.ts";
import { carriedWhatIfs, type EditLog, type Tried, tried, untried, type WhatIf } from "./what-ifs.ts";

export interface Session {
  /** As in the file that was opened or last saved. */
  readonly base: readonly LogText[];
  /** As edited, without what-ifs. */
  readonly texts: readonly LogText[];
  /** With the what-ifs: what is worked out. */
  readonly worked: readonly LogText[];
  /** Worked out with the what-ifs, when first asked for after a change; undefined where the texts are no log. */
  readonly log: Log | undefined;
  /** The same; the last one that could be worked out where the texts are no log. */
  readonly page: Page;
  /**
   * All that a check of the log tells, with the what-ifs, at places of the texts without. Of a large log: what was
   * heard last, since reading it takes longer than a key stroke may.
   */
  readonly issues: readonly Issue[];
  readonly whatIfs: readonly WhatIf[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Changes the texts where that is possible. Returns what is wrong at the edited place, or why it is refused. */
  edit(edit: LogEdit): readonly Issue[];
  /** Whatever is edited within the call is one step back, and told once. Write from the last place to the first. */
  together(work: () => void): void;
  /** The file as somebody else has it, or a draft, in place of the texts; one step back. */
  replace(texts: readonly LogText[]): void;
  /** Tries a text at a place of the texts without keeping it; undefined goes back to the logged value. */
  whatIf(at: Place, text: string | undefined): readonly Issue[];
  undo(): void;
  redo(): void;
  /** These are now the file's; the texts stay as they are edited. */
  saved(texts: readonly LogText[]): void;
  /** Whether the log is too large to be read between two key strokes: its issues are heard then. */
  readonly large: boolean;
  /** What a check told of these texts, worked out elsewhere; idle where they are no longer those that are worked out. */
  heard(worked: readonly LogText[], issues: readonly Issue[]): void;
  /** A place of a worked-out page as one of the texts: they differ while something is tried. */
  placeInTexts(place: Place): Place;
  /** Calls the function after every change, with how the texts differ from before. Returns what ends it. */
  subscribe(changed: (splices: readonly Splice[]) => void): () => void;
}

export interface SessionSetup {
  /** The log first, then the CSV files that it names. */
  readonly texts: readonly LogText[];
  readonly notebook: Pick<Notebook, "run">;
  readonly editLog: EditLog;
}

/** Characters that are read in some hundredths of a second. */
const READ_HERE = 100_000;

/** A session over these texts. Nothing is read or worked out before it is asked for. */
export function startSession({ texts: opened, notebook, editLog }: SessionSetup): Session {
  invariant(opened.length > 0, "a session needs the log's text");
  const listeners = new Set<(splices: readonly Splice[]) => void>();
  const steps = newSteps();
  let base = opened;
  let texts = opened;
  let whatIfs: readonly WhatIf[] = [];
  let trial: Tried = { texts, steps: [] };
  let read: ReadTexts | undefined;
  let issues: readonly Issue[] | undefined;
  let lastHeard: readonly Issue[] = [];
  let page: Page | undefined;
  let lastGood: Page | undefined;
  /** Within together(): the texts at its start. */
  let gathered: readonly LogText[] | undefined;

  const reading = (): ReadTexts => {
    read ??= readTexts(trial.texts);
    return read;
  };
  const large = (): boolean => trial.texts.reduce((sum, { text }) => sum + text.length, 0) > READ_HERE;
  const told = (): readonly Issue[] => {
    if (issues === undefined && large()) return lastHeard;
    issues ??= checkedIssues(reading()).map((issue) => inTexts(issue, trial));
    return issues;
  };
  const tell = (splices: readonly Splice[]): void => {
    for (const listener of [...listeners]) listener(splices);
  };

  function tryNow(now: readonly WhatIf[]): void {
    whatIfs = now;
    trial = tried(texts, whatIfs, editLog);
    read = undefined;
    issues = undefined;
    page = undefined;
  }

  function change(now: readonly LogText[], splices: readonly Splice[]): void {
    texts = now;
    tryNow(carriedWhatIfs(whatIfs, splices));
    if (gathered === undefined) tell(splices);
  }

  function step(now: readonly LogText[], splices: readonly Splice[]): void {
    if (gathered === undefined) steps.add(texts, now, splices);
    change(now, splices);
  }

  function travel(way: "undo" | "redo"): void {
    invariant(gathered === undefined, "nothing is undone in the middle of a step");
    const now = steps.travel(way, texts);
    if (now) change(now, splicesBetween(texts, now));
  }

  return {
    get base() {
      return base;
    },
    get texts() {
      return texts;
    },
    get worked() {
      return trial.texts;
    },
    get log() {
      return reading().log;
    },
    get page() {
      const { log, readIssues } = reading();
      if (page === undefined && log !== undefined) {
        const made = notebook.run(log);
        page = { ...made, issues: [...issuesInUnits(readIssues, log), ...made.issues] };
        lastGood = page;
      }
      const shown = page ?? lastGood;
      invariant(shown !== undefined, "the texts are no log, and never were: there is no page");
      return shown;
    },
    get issues() {
      return told();
    },
    get whatIfs() {
      return whatIfs;
    },
    get canUndo() {
      return steps.canUndo;
    },
    get canRedo() {
      return steps.canRedo;
    },
    edit(edit) {
      const edited = editLog(texts, edit);
      if (!edited.texts) return edited.issues;
      const splices = splicesBetween(texts, edited.texts, edited.changed);
      if (splices.length > 0) step(edited.texts, splices);
      return [...edited.issues, ...issuesAt(told(), edited.changed)];
    },
    together(work) {
      if (gathered !== undefined) return work();
      const start = texts;
      gathered = start;
      try {
        work();
      } finally {
        gathered = undefined;
        const { differs, splices } = difference(start, texts);
        if (differs) {
          steps.add(start, texts, splices);
          tell(splices);
        }
      }
    },
    replace(now) {
      const { differs, splices } = difference(texts, now);
      if (differs) step(now, splices);
    },
    whatIf(place, text) {
      const others = whatIfs.filter(({ at }) => at.file !== place.file || at.offset !== place.offset);
      if (text === undefined && others.length === whatIfs.length) return [];
      if (text !== undefined) {
        const edited = editLog(texts, { kind: "write", at: place, text });
        if (!edited.texts) return edited.issues;
      }
      tryNow(text === undefined ? others : [...others, { at: place, text }]);
      if (gathered === undefined) tell([]);
      return text === undefined ? [] : issuesAt(told(), place);
    },
    undo: () => travel("undo"),
    redo: () => travel("redo"),
    saved(now) {
      base = now;
      tell([]);
    },
    get large() {
      return large();
    },
    heard(worked, found) {
      if (worked !== trial.texts) return;
      lastHeard = found.map((issue) => inTexts(issue, trial));
      issues = lastHeard;
      tell([]);
    },
    placeInTexts: (place) => untried(place, trial),
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}

function inTexts(issue: Issue, trial: Tried): Issue {
  return issue.place && trial.steps.length > 0 ? { ...issue, place: untried(issue.place, trial) } : issue;
}

/** Those that lie at the place, or around it. */
function issuesAt(issues: readonly Issue[], place: Place | undefined): readonly Issue[] {
  if (!place) return [];
  return issues.filter((issue) => issue.place && (holds(place, issue.place) || holds(issue.place, place)));
}
