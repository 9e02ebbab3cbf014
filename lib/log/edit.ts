// An edit of a log or of a CSV file beside it: the bytes of one value, one row or one key, and nothing else.

import { invariant } from "../issue.ts";
import { noSuchText } from "./complaints-edit.ts";
import { csvEdited } from "./edit-csv.ts";
import type { Edited, LogEdit } from "./edit-types.ts";
import { yamlEdited } from "./edit-yaml.ts";
import type { LogText } from "./types.ts";

/**
 * The texts of a log with one edit made: a value written, a row or a named entry or a key added, or one of these
 * removed. Comments, order, indentation, line ends and the spelling of all other figures stay byte for byte.
 *
 * texts: as in Log.texts, the log first, then the CSV files that it names. A place is one that the reader gave for these
 * very texts. A text is written as typed, "12.4 ± 0.1 g": quotes and escapes are put where YAML or CSV needs them, and
 * kept where they stood; "" leaves a key with nothing after it. Nested keys of a new row or entry are joined by "/", as
 * "moisture/damp"; a slash within a name is "~1" and a tilde "~0" (RFC 6901). A single entry named "" makes an item of
 * a plain list.
 *
 * After the edit the text is read again. Unless exactly the wanted value has changed and nothing new is wrong with the
 * writing, the edit is refused: no texts, and issues that say why. What is written at an anchor (&) holds for all that
 * repeat it by *, and a note says so. Writing at the * itself is refused.
 *
 * Written back, the old text gives the old bytes where old and new could both stand without quotes, or both stand in the
 * quotes that were there.
 *
 *     const log = { name: "log.yaml", text: "heap: { mass: 120 kg }   # weighed\n" };
 *     const at = { file: "log.yaml", offset: 14, length: 6 };
 *     editLog([log], { kind: "write", at, text: "118 kg" }).texts?.[0]?.text   // "heap: { mass: 118 kg }   # weighed\n"
 */
export function editLog(texts: readonly LogText[], edit: LogEdit): Edited {
  invariant(texts.length > 0, "editLog wants the texts of a log, the log first.");
  const index = fileOf(texts, edit);
  const file = texts[index];
  if (!file) return { issues: [noSuchText(nameIn(edit))] };
  const { text, issues, changed } = index === 0 ? yamlEdited(file, edit) : csvEdited(file, edit);
  if (text === undefined) return { issues };
  return {
    texts: texts.map((one, at) => (at === index ? { ...one, text } : one)),
    issues,
    ...(changed ? { changed } : {}),
  };
}

/** Index of the text that the edit is for. A path goes into a CSV file when it begins with its name. */
function fileOf(texts: readonly LogText[], edit: LogEdit): number {
  if (edit.kind === "write") return texts.findIndex(({ name }) => name === edit.at.file);
  const [first] = edit.kind === "add" ? edit.to : edit.path;
  return Math.max(
    0,
    texts.findIndex(({ name }, index) => index > 0 && name === first),
  );
}

const nameIn = (edit: LogEdit): string => (edit.kind === "write" ? edit.at.file : "");
