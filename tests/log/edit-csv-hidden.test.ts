// What cannot be seen is refused for a CSV file by its name, and not as a change of something else.

import { expect, test } from "vitest";
import { editLog } from "../../lib/log/edit.ts";
import type { LogEdit } from "../../lib/log/edit-types.ts";
import { logOutline } from "../../lib/log/outline.ts";

const texts = [
  { name: "log.yaml", text: "format: 1\nbatches file: waters.csv\n" },
  { name: "waters.csv", text: "batch,moisture,note\nW1,2.7 %,dry\nW2,3.0 %,damp\n" },
];
const rows = logOutline(texts).find((node) => node.kind === "rows")!;

test.each(["was \u202eis", "zero\u200bwidth", "\u2066apart\u2069", "bell\u0007"])("%j", (text) => {
  if (rows.kind !== "rows") throw new Error("the file's rows are no table");
  const edits: LogEdit[] = [
    { kind: "write", at: rows.rows[0]!.at(-1)!.place, text },
    { kind: "add", to: rows.path, entries: { batch: "W3", note: text } },
  ];
  for (const edit of edits) {
    const { texts: after, issues } = editLog(texts, edit);
    expect(after).toBeUndefined();
    expect(issues.map(({ code }) => code)).toEqual(["log/edit-sign"]);
    expect(issues[0]!.message).toContain("cannot be seen");
  }
});
