// Bench cards: every test has one, the hazard stands first, and its lines are read by the log's reader.

import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";
import { formsOf, testForms } from "../../lib/log/test-forms.ts";
import { cardNamed, cards, writeCard } from "../../lib/page/card.ts";
import { cardYaml, readingBoxes } from "../../lib/page/card-fields.ts";
import { promisesIn } from "../../lib/page/forbidden-words.ts";

const pages = new Map(
  await Promise.all(cards.map(async (card) => [card.name, await writeCard(card)] as const)),
);

test("every test of the log has a card, and each way of permeability its own; a sieving and a trial too", () => {
  for (const form of testForms) {
    const own = cards.filter(({ test: asked }) => asked?.name === form.test);
    expect(own.length, form.test).toBeGreaterThan(0);
    if (form.test === "permeability")
      expect(own.map(({ test: asked }) => asked?.method)).toContain(form.methods[0]);
  }
  expect(cards.map(({ name }) => name)).toEqual(expect.arrayContaining(["sieving", "trial"]));
  expect(new Set(cards.map(({ name }) => name)).size).toBe(cards.length);
  expect(cardNamed("Green compression")?.name).toBe("green-compression");
  expect(cardNamed("colour")).toBeUndefined();
});

test("the hazard with its trigger and the local rules stand before rig, steps and boxes", () => {
  for (const [name, html] of pages) {
    const order = [
      'class="caution"',
      'class="trigger"',
      "Local rules",
      "<ol>",
      'class="once"',
      'class="boxes',
      "<pre>",
    ].map((part) => html.indexOf(part));
    expect(order, name).not.toContain(-1);
    expect(order, name).toEqual([...order].sort((a, b) => a - b));
  }
});

test("each procedure names its own hazard", () => {
  const says: readonly (readonly [card: RegExp, words: RegExp])[] = [
    [/green-|splitting/, /Ten to twenty kilograms/],
    [/compactability$|density|permeability/, /falling rammer crushes fingers/],
    [/permeability-(constant|falling|bleeding)/, /vessel under air pressure can burst/],
    [/compactability-pressed/, /press crushes fingers/],
    [/permeability-aspirator/, /under suction caves in/],
    [/moisture|clay|sieving/, /not used for food again/],
    [/moisture|clay|sieving|trial/, /mask that seals/],
    [/clay-by-wash/, /Never caustic soda/],
    [/trial|squeeze/, /Over-wet|over-wet/],
    [/moisture|compactability|green|splitting|permeability|density|trial/, /stopped and unplugged/],
  ];
  for (const [which, words] of says) {
    const named = [...pages].filter(([name]) => which.test(name));
    expect(named.length).toBeGreaterThan(0);
    for (const [name, html] of named) expect(html, name).toMatch(words);
  }
});

test("no card promises anything, fetches anything or runs anything", () => {
  for (const [name, html] of pages) {
    expect(promisesIn(html.replace(/<[^>]*>/g, " ")), name).toEqual([]);
    expect(html, name).not.toMatch(/<script|https?:|style="/);
    expect(html, name).toMatch(/Content-Security-Policy/);
  }
});

test("boxes stand in the order and with the keys of the log, with tare, time and scale", () => {
  for (const card of cards) {
    if (!card.test || card.test.name === "squeeze") continue;
    const { name, method } = card.test;
    const form = formsOf(name).find(({ methods }) => method === undefined || methods.includes(method));
    expect(readingBoxes(card).map(({ key }) => key)).toEqual(form?.fields.map(({ key }) => key));
    const html = pages.get(card.name)!;
    const places = readingBoxes(card).map(({ key }) =>
      html.indexOf(`<td><span class="key">${key}</span></td>`),
    );
    expect(places, card.name).toEqual([...places].sort((a, b) => a - b));
    expect(places, card.name).not.toContain(-1);
    expect(
      card.once.map(({ key }) => key),
      card.name,
    ).toContain("time");
  }
  for (const name of ["moisture", "green-compression", "clay-by-wash", "density"])
    expect(cardNamed(name)?.once.map(({ key }) => key)).toEqual(expect.arrayContaining(["scale", "tare"]));
});

/** Figures that fit together; made up. */
const figures: { readonly [key: string]: string } = {
  name: "Invented",
  date: "2026-04-11",
  state: "new",
  order: "1",
  axis: "moisture",
  scale: "small scale",
  "sieve set": "home stack",
  minutes: "15",
  washed: "no",
  start: "50.0",
  rig: "yard tube",
  dish: "80",
  damp: "232.4",
  "dried at": "105",
  dry: "224.6",
  grain: "210",
  filled: "120",
  rammed: "66",
  pressed: "66",
  load: "14",
  height: "51",
  mass: "155",
  air: "2000",
  drawn: "1000",
  water: "150",
  suction: "80",
  from: "200",
  to: "100",
  seconds: "21",
  temperature: "15",
  squeeze: "3",
  sand: "4",
  bentonite: "0.32",
  mulled: "10",
  stood: "120",
  moisture: "3.4",
  compactability: "45",
  "green compression": "70",
  permeability: "60",
};
const sieves: { readonly [label: string]: string } = {
  "No. 20": "0.1",
  "No. 30": "0.4",
  "No. 40": "3.1",
  "No. 50": "12.6",
  "No. 70": "18.3",
  "No. 100": "11.2",
  "No. 140": "3.4",
  "No. 200": "0.7",
  pan: "0.2",
};
test("a trial sheet has a column or a line for whatever its log lines ask, by the log's own key", () => {
  for (const name of ["trial", "trial-clay"]) {
    const card = cardNamed(name)!;
    const asked: string[] = [];
    cardYaml(card, (key) => {
      asked.push(key);
      return "1";
    });
    const written = [...card.table!.columns, ...card.once.flatMap(({ key }) => key.split(", "))].map(
      (column) => column.split(",")[0]!.replace("- ", ""),
    );
    expect(asked.filter((key) => key !== "name" && !written.includes(key))).toEqual([]);
    for (const key of ["load", "damp", "dry", "filled", "rammed", "seconds"])
      expect(card.table!.columns.some((column) => column.startsWith(key))).toBe(true);
    expect(card.steps.join(" ")).toMatch(/method: pressed/);
  }
  expect(cardYaml(cardNamed("trial-clay")!)).toContain("axis: clay");
  expect(cardYaml(cardNamed("compactability-pressed")!)).toContain(
    "{ method: pressed, rig: ____, pressed: ____ mm }",
  );
});

const head = `format: 1
invented: yes
scales: { small scale: { reads to: 0.1 g, within: 0.2 g } }
sieve sets: { home stack: { frame: 200 mm } }
rigs: { yard tube: { bore: 50.8 mm, tube: 120 mm, column: 113 mm, vessel: 20 l, blank time: 0.5 s, blank: 2 mm, ruler: 0.5 mm } }
`;

test("the lines of every card, filled in, are read without a complaint", () => {
  for (const card of cards) {
    const yaml = cardYaml(card, (key) => {
      const value = figures[key] ?? sieves[key];
      if (value === undefined) throw new Error(`no figure for ${key}`);
      return value;
    });
    const { value, issues } = readLog(head + yaml, { name: `${card.name}.yaml` });
    const others = issues.filter(({ code }) => code !== "log/no-usual-ranges");
    expect(others, `${card.name}:\n${yaml}`).toEqual([]);
    expect((value?.batches.length ?? 0) + (value?.sands.length ?? 0), card.name).toBe(1);
  }
});

test("blanks stand in the lines on the page", () => {
  expect(pages.get("moisture")).toContain(
    "method: oven, scale: ____, dish: ____ g, damp: ____ g, dry: ____ g",
  );
});
