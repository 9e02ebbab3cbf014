// The unseen runs after a page is first worked out: few, told to nobody, and given up for whatever is wanted.

import { expect, test } from "vitest";
import { rehearsals } from "../../lib/live/rehearse.ts";
import { workFor } from "../../lib/live/serve-worker.ts";
import type { Told, Wanted } from "../../lib/live/work-out.ts";
import type { Log } from "../../lib/log/types.ts";
import { notebook } from "../../lib/page/notebook.ts";
import { texts } from "./log.ts";

const wanted = (id: number, of = texts): Wanted => ({
  id,
  texts: of,
  shows: "wide",
  inView: [],
  check: false,
  drawn: [],
});

/** What a run was asked to work out, and what came of it in the page. */
function worked({ rehearses = true, fails = false } = {}) {
  const runs: Log[] = [];
  const told: Told[] = [];
  const spied = notebook("Damp masses", (log) => {
    runs.push(log);
    if (fails && runs.length > 1) throw new Error("only when nobody looks");
    return { question: "What was weighed?", answer: [log.fingerprint], sections: [] };
  });
  const work = workFor(spied, (one) => told.push(one), { rehearses });
  return { runs, told, work };
}

/** Until nothing more has run for a quarter of a second: each takes a few breaths. */
async function rest(runs: readonly Log[]): Promise<void> {
  for (let before = -1; before !== runs.length; ) {
    before = runs.length;
    await new Promise((done) => setTimeout(done, 250));
  }
}

test("six more runs, each of another log, and nothing told of them", async () => {
  const { runs, told, work } = worked();
  work.want(wanted(1));
  await rest(runs);
  expect(runs).toHaveLength(7);
  expect(new Set(runs.map(({ fingerprint }) => fingerprint)).size).toBe(7);
  expect(told.map(({ kind }) => kind)).toEqual(["page", "rest", "done", "drawn"]);
  work.want(wanted(2));
  await rest(runs);
  expect(runs).toHaveLength(8);
  const [first, again] = told.filter((one) => one.kind === "page");
  expect(again!.parts).toEqual(first!.parts);
});

test("what is wanted meanwhile is worked out at the next step, and the rest rehearsed after it", async () => {
  const { runs, told, work } = worked();
  work.want(wanted(1));
  while (runs.length < 2) await new Promise((done) => setImmediate(done));
  const edited = texts.map((one) => ({ ...one, text: one.text.replace("152.6", "152.9") }));
  work.want(wanted(2, edited));
  await rest(runs);
  expect(told.map(({ id }) => id)).toEqual([1, 1, 1, 1, 2, 2, 2, 2]);
  expect(runs.findIndex((log) => log.texts[0]!.text === edited[0]!.text)).toBe(2);
  expect(runs).toHaveLength(8);
});

test("a notebook that fails on a turned figure says nothing of it", async () => {
  const { runs, told, work } = worked({ fails: true });
  work.want(wanted(1));
  await rest(runs);
  expect(runs.length).toBeGreaterThan(1);
  expect(told.map(({ kind }) => kind)).toEqual(["page", "rest", "done", "drawn"]);
});

test("none in the page's own thread", async () => {
  const { runs, work } = worked({ rehearses: false });
  work.want(wanted(1));
  await rest(runs);
  expect(runs).toHaveLength(1);
});

test("one digit of one figure is turned, every time another; none of a large log, of one without figures, of a slow one", () => {
  const some = rehearsals();
  const turned = Array.from({ length: 6 }, () => some.next(wanted(1))!.texts);
  const digits = turned.map((now) =>
    now.flatMap(({ text }, k) =>
      [...text].flatMap((sign, at) => (sign === texts[k]!.text[at] ? [] : [`${k}:${at}`])),
    ),
  );
  expect(digits.every((one) => one.length === 1)).toBe(true);
  expect(new Set(digits.flat()).size).toBe(6);
  expect(some.next(wanted(1))).toBeUndefined();
  const padded = texts.map((one) => ({ ...one, text: one.text + "# more\n".repeat(6000) }));
  expect(rehearsals().next(wanted(1, padded))).toBeUndefined();
  expect(rehearsals().next(wanted(1, [{ name: "a.yaml", text: "format: 1\n" }]))).toBeUndefined();
  const slow = rehearsals();
  slow.took(1600);
  expect(slow.next(wanted(1))).toBeUndefined();
  const slower = rehearsals();
  slower.took(700);
  expect(slower.next(wanted(1))).toBeDefined();
  slower.took(900);
  expect(slower.next(wanted(1))).toBeUndefined();
});
