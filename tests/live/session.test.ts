// A session: edits, the way back, what is tried, places while something is tried.

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { startSession } from "../../lib/live/session.ts";
import { editLog } from "../../lib/log/edit.ts";
import type { LogText } from "../../lib/log/types.ts";
import notebook from "../../notebooks/grain-fineness.ts";

const text = readFileSync("data-demo/grain-fineness/two-bags.yaml", "utf8");
const texts: readonly LogText[] = [{ name: "two-bags.yaml", text }];
const opened = () => startSession({ texts, notebook, editLog });
const placeOf = (part: string, within: string, from = 0) => {
  const offset = within.indexOf(part, from);
  if (offset < 0) throw new Error(`${part} is not in the text`);
  return { file: "two-bags.yaml", offset, length: part.length };
};
/** A reading of the first sieving and the one after it. */
const [first, second] = (() => {
  const { log } = opened();
  const [a, b] = log!.sands[0]!.sievings[0]!.retained;
  return [a!.mass.place, b!.mass.place];
})();
const typed = (place: { readonly offset?: number; readonly length?: number }, now = text) =>
  now.slice(place.offset!, place.offset! + place.length!);

describe("edits", () => {
  test("change the one value; undo and redo lead there and back; base stays", () => {
    const session = opened();
    const told: number[] = [];
    session.subscribe((splices) => told.push(splices.length));
    expect(session.edit({ kind: "write", at: first, text: "0.7" })).toEqual([]);
    const edited = session.texts[0]!.text;
    expect(edited).toBe(`${text.slice(0, first.offset!)}0.7${text.slice(first.offset! + first.length!)}`);
    session.undo();
    expect(session.texts[0]!.text).toBe(text);
    expect([session.canUndo, session.canRedo]).toEqual([false, true]);
    session.redo();
    expect(session.texts[0]!.text).toBe(edited);
    expect(session.base[0]!.text).toBe(text);
    expect(told).toEqual([1, 1, 1]);
  });

  test("a faulty value is told at its place and stays as typed", () => {
    const session = opened();
    const issues = session.edit({ kind: "write", at: first, text: "much" });
    expect(issues.map(({ severity }) => severity)).toContain("error");
    expect(issues[0]!.place!.offset).toBeGreaterThanOrEqual(first.offset!);
    expect(typed({ offset: first.offset!, length: 4 }, session.texts[0]!.text)).toBe("much");
    expect(session.page.issues.length).toBeGreaterThan(0);
  });

  test("several at once are one step back and told once", () => {
    const session = opened();
    let told = 0;
    session.subscribe(() => told++);
    session.together(() => {
      session.edit({ kind: "write", at: second, text: "9.9" });
      session.edit({ kind: "write", at: first, text: "0.75" });
    });
    expect(told).toBe(1);
    session.undo();
    expect(session.texts[0]!.text).toBe(text);
  });

  test("random edits and steps back: undone to the end the text is the file's, redone the last", () => {
    const session = opened();
    for (let i = 0; i < 60; i++) {
      const { log } = session;
      const all = log!.sands.flatMap(({ sievings }) => sievings.flatMap(({ retained }) => retained));
      const { mass } = all[(i * 7) % all.length]!;
      session.edit({ kind: "write", at: mass.place, text: (i / 7).toFixed(i % 3) });
      if (i % 5 === 4) session.undo();
    }
    const last = session.texts[0]!.text;
    let steps = 0;
    while (session.canUndo) {
      session.undo();
      steps++;
    }
    expect(session.texts[0]!.text).toBe(text);
    expect(steps).toBeGreaterThan(30);
    while (session.canRedo) session.redo();
    expect(session.texts[0]!.text).not.toBe(text);
    expect(last.length).toBeGreaterThan(0);
  });

  test("a file that comes is one step, too", () => {
    const session = opened();
    const more = [...texts, { name: "more.csv", text: "a,b\n1,2\n" }];
    session.replace(more);
    expect(session.texts).toEqual(more);
    session.undo();
    expect(session.texts).toEqual(texts);
    session.redo();
    expect(session.texts).toEqual(more);
  });
});

describe("what if", () => {
  test("is worked out and not kept, and goes back", () => {
    const session = opened();
    const before = session.page.figures;
    session.whatIf(second, "25.125");
    expect(session.texts[0]!.text).toBe(text);
    expect(session.worked[0]!.text).not.toBe(text);
    expect(session.page.figures).not.toEqual(before);
    session.whatIf(second, undefined);
    expect(session.page.figures).toEqual(before);
    expect(session.whatIfs).toEqual([]);
  });

  test("moves with edits before it, and places on the page are those of the texts", () => {
    const session = opened();
    session.whatIf(second, "25.125");
    session.edit({ kind: "write", at: first, text: "0.7512345" });
    const [{ at } = { at: first }] = session.whatIfs;
    expect(typed(at, session.texts[0]!.text)).toBe(typed(second));
    const sieving = session.log!.sands[0]!.sievings[0]!;
    const shown = sieving.retained.map(({ mass }) => session.placeInTexts(mass.place));
    const wanted = sieving.retained.map(({ mass }, i) =>
      i === 1 ? typed(second) : typed(mass.place, session.worked[0]!.text),
    );
    expect(shown.map((place) => typed(place, session.texts[0]!.text))).toEqual(wanted);
  });

  test("ends where its value is edited away", () => {
    const session = opened();
    session.whatIf(second, "25.125");
    session.replace([{ name: "two-bags.yaml", text: "format: 1\n" }]);
    expect(session.whatIfs).toEqual([]);
    expect(placeOf("format", session.texts[0]!.text).offset).toBe(0);
  });
});
