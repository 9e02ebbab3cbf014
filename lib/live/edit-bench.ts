// What the parts of the editing share: the session, edits by path, what is said aloud, and who is told of changes.

import type { Issue } from "../issue.ts";
import type { LogEdit, LogPath } from "../log/edit-types.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import { type LogPlaces, learnPlaces, logPlaces, pathKey } from "./edit-places.ts";
import { changesOf, type LogChange } from "./history.ts";
import type { Session } from "./session.ts";

export interface Bench {
  readonly session: Session;
  places(): LogPlaces;
  /** Against the file. */
  changes(): readonly LogChange[];
  changeAt(path: LogPath): LogChange | undefined;
  /** What a check tells of the value or group. */
  issuesAt(node: OutlineNode): readonly Issue[];
  tried(path: LogPath): string | undefined;
  /** All as one step back; what the session says of it. */
  apply(edits: readonly LogEdit[]): readonly Issue[];
  write(path: LogPath, text: string): readonly Issue[];
  /** For a screen reader, and as a line of the bar. */
  say(text: string): void;
  /** Opens the log's panel at a path; folded: the group there stays as it is, and the focus comes to its name. */
  openLog(path?: LogPath, folded?: boolean): void;
}

export function benchOf(session: Session, parts: Pick<Bench, "say" | "openLog">): Bench {
  let last = session.texts;
  session.subscribe(() => {
    learnPlaces(last, session.texts);
    last = session.texts;
  });
  const places = (): LogPlaces => logPlaces(session.texts);
  let listed:
    | { base: unknown; texts: unknown; changes: readonly LogChange[]; byPath: Map<string, LogChange> }
    | undefined;
  const list = () => {
    const { base, texts } = session;
    if (listed?.base !== base || listed.texts !== texts) {
      const changes = changesOf(base, texts);
      listed = { base, texts, changes, byPath: new Map(changes.map((one) => [pathKey(one.path), one])) };
    }
    return listed;
  };
  const apply = (edits: readonly LogEdit[]): readonly Issue[] => {
    const issues: Issue[] = [];
    session.together(() => {
      for (const edit of edits) {
        const before = session.texts;
        issues.push(...session.edit(edit));
        learnPlaces(before, session.texts);
      }
      // Figures as in the file are spelled as there: quotes that a faulty text wanted go with it.
      if (list().changes.length === 0) session.replace(session.base);
    });
    return issues;
  };
  return {
    session,
    places,
    changes: () => list().changes,
    changeAt: (path) => list().byPath.get(pathKey(path)),
    issuesAt: ({ place }) =>
      session.issues.filter((issue) => {
        const { file, offset } = issue.place ?? {};
        if (offset === undefined || place.offset === undefined || file !== place.file) return false;
        return offset >= place.offset && offset <= place.offset + Math.max(0, (place.length ?? 0) - 1);
      }),
    tried: (path) => {
      // Asked of every cell of a page; mostly nothing is tried.
      if (session.whatIfs.length === 0) return undefined;
      const node = places().get(path);
      return (
        node &&
        session.whatIfs.find(({ at }) => at.file === node.place.file && at.offset === node.place.offset)?.text
      );
    },
    apply,
    write: (path, text) => {
      const node = places().get(path);
      return node?.kind === "value" ? apply([{ kind: "write", at: node.place, text }]) : [];
    },
    ...parts,
  };
}

/** The message with what to do, as sentences. */
export function issueWords({ message, remedy }: Issue): string {
  const said = remedy === undefined ? message : `${message} ${remedy}`;
  return /[.!?…]$/.test(said) ? said : `${said.replaceAll("`", "")}.`;
}

/** For a line of the bar, which must not cover a telephone: the worst of them, and how many more there are. */
export function fewWords(issues: readonly Issue[]): string {
  const ranks = ["error", "warning", "note"];
  const [worst, ...others] = [...issues].sort(
    (a, b) => ranks.indexOf(a.severity) - ranks.indexOf(b.severity),
  );
  if (!worst) return "";
  const more = others.length === 0 ? "" : ` ${others.length} more on the page.`;
  return `${issueWords(worst)}${more}`;
}
