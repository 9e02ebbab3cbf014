// Changes against the file: in words, and each with a way back.

import { expect, test } from "vitest";
import { editLog, type LogPath, type LogText } from "../../lib/index.ts";
import { logPlaces } from "../../lib/live/edit-places.ts";
import { changesOf } from "../../lib/live/history.ts";
import { changeWords } from "../../lib/live/panel-changes.ts";
import { logText, texts } from "./log.ts";

function written(from: readonly LogText[], path: LogPath, text: string): readonly LogText[] {
  const node = logPlaces(from).get(path)!;
  return editLog(from, { kind: "write", at: node.place, text }).texts!;
}

function wayBack(base: readonly LogText[], now: readonly LogText[]): readonly LogText[] {
  let back = now;
  for (const change of changesOf(base, now))
    for (const edit of change.back) back = editLog(back, edit).texts!;
  return back;
}

test("nothing differs from itself", () => {
  expect(changesOf(texts, texts)).toEqual([]);
  expect(
    changesOf(
      texts,
      texts.map((one) => ({ ...one })),
    ),
  ).toEqual([]);
});

test("a value is told with what it was, and its way back gives the file's bytes", () => {
  const now = written(texts, ["batches", "W1", "moisture", "damp"], "152.9 ± 0.1 g");
  expect(changesOf(texts, now).map(changeWords)).toEqual(["W1, moisture, damp: 152.9 ± 0.1 g, was 152.6 g"]);
  expect(wayBack(texts, now)).toEqual(texts);
});

test("a cell of a CSV file is told by its row, counted from 1", () => {
  const now = written(texts, ["swelling.csv", 1, "wet"], "13.5");
  expect(changesOf(texts, now).map(changeWords)).toEqual(["swelling.csv, row 2, wet: 13.5, was 13.9"]);
  expect(wayBack(texts, now)).toEqual(texts);
});

test("a row taken out of the middle is one change, whatever its neighbours are numbered now", () => {
  const now = editLog(texts, { kind: "remove", path: ["batches", "W1", "green compression", 0] }).texts!;
  const changes = changesOf(texts, now);
  expect(changes.map(changeWords)).toEqual(["W1, green compression, row 1: taken out, load 14.7 kg"]);
  expect(wayBack(texts, now)[0]!.text).toContain("{ load: 14.7 kg }, { load: 14.2 kg }, { load: 14.9 kg }");
});

test("a row of a CSV file put in, and taken out again by its way back", () => {
  const now = editLog(texts, { kind: "add", to: ["swelling.csv"], entries: { jar: "D", dry: "9.9" } }).texts!;
  expect(changesOf(texts, now).map(changeWords)).toEqual(["swelling.csv, row 4: new, jar D, dry 9.9"]);
  expect(wayBack(texts, now)).toEqual(texts);
});

test("a new batch is one change; the way back of a batch taken out brings its figures again", () => {
  const more = editLog(texts, {
    kind: "add",
    to: ["batches"],
    name: "W3",
    entries: { date: "2026-07-13", "moisture/damp": "151 g", "moisture/dry": "146 g" },
  }).texts!;
  expect(changesOf(texts, more).map(changeWords)).toEqual([
    "W3: new, date 2026-07-13, moisture/damp 151 g, moisture/dry 146 g",
  ]);
  expect(wayBack(texts, more)).toEqual(texts);
  const fewer = editLog(texts, { kind: "remove", path: ["batches", "W2"] }).texts!;
  const again = wayBack(texts, fewer);
  expect(logPlaces(again).get(["batches", "W2", "moisture", "dry"])).toMatchObject({ text: "148.4 g" });
  expect(changesOf(texts, again)).toEqual([]);
});

test("comments are no changes of the log's figures", () => {
  const now = [{ ...texts[0]!, text: logText.replace("# a first try", "# a second look") }, texts[1]!];
  expect(changesOf(texts, now)).toEqual([]);
});
