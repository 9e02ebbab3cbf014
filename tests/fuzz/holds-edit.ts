// An edit of a log: what was written is read, the bytes around it stay, and written back it is as it was.

import { editLog, logOutline, type OutlineNode } from "../../lib/index.ts";
import { claim } from "./claim.ts";
import type { Texts } from "./texts.ts";

type Value = OutlineNode & { readonly kind: "value" };

function valuesIn(nodes: readonly (OutlineNode | undefined)[]): Value[] {
  return nodes.flatMap((node): Value[] => {
    if (!node) return [];
    if (node.kind === "value") return [node];
    return valuesIn(node.kind === "group" ? node.parts : node.rows.flat());
  });
}

const outlined = (texts: Texts): Value[] => valuesIn(logOutline(texts));

/** pick: any whole number; which value is written over. */
export function editHolds(texts: Texts, pick: number, text: string): void {
  const before = outlined(texts);
  const value = before[pick % Math.max(1, before.length)];
  if (!value) return;
  const { file, offset = 0, length = 0 } = value.place;
  const index = texts.findIndex(({ name }) => name === file);
  const old = texts[index]?.text ?? "";
  claim(offset + length <= old.length, "an outline's value lies outside its text");
  const { texts: now, issues } = editLog(texts, { kind: "write", at: value.place, text });
  if (!now) {
    claim(issues.length > 0 && issues[0]!.severity === "error", "an edit was refused without an error");
    claim(issues[0]!.remedy, `${issues[0]!.code} says not what to do`);
    return;
  }
  const edited = now[index]!.text;
  claim(edited.endsWith(old.slice(offset + length)), "an edit changed what stands behind it");
  if (length > 0) claim(edited.startsWith(old.slice(0, offset)), "an edit changed what stands before it");
  const after = outlined(now);
  const wanted = index === 0 ? text : text.trim();
  // What is written at an anchor holds for its repeats.
  const anchored = /[&*]\w/.test(texts[0]!.text);
  claim(
    after.length === before.length || anchored,
    `an edit made ${after.length} values of ${before.length}`,
  );
  for (const [k, one] of after.entries()) {
    const meant = before[k] === value ? wanted : before[k]?.text;
    claim(
      anchored || one.text === meant,
      () => `${JSON.stringify(meant)} is read as ${JSON.stringify(one.text)} after an edit`,
    );
  }
}
