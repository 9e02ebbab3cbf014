// Bench cards: every test has one, the hazard stands first, and its lines are read by the log's reader.

import { expect, test } from "vitest";
import { eventKinds } from "../../lib/log/heap-keys.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { formsOf, testForms, testNames } from "../../lib/log/test-forms.ts";
import { type Card, cardNamed, cards, writeCard } from "../../lib/page/card.ts";
import { cardYaml, readingBoxes } from "../../lib/page/card-fields.ts";
import { promisesIn } from "../forbidden-words.ts";

const pages = new Map(
  await Promise.all(cards.map(async (card) => [card.name, await writeCard(card)] as const)),
);

test("every test of the log has a card, and each way of writing it down its own; a sieving and a trial too", () => {
  for (const form of testForms) {
    const own = cards.filter(({ test: asked }) => asked?.name === form.test);
    expect(own.length, form.test).toBeGreaterThan(0);
    if (form.methods.length > 0)
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
    [/moisture|clay-by|sieving/, /not used for food again/],
    [/moisture|clay|sieving|trial|rebond|new-sand|losses|castings/, /mask that seals/],
    [/^pour$/, /spilt on damp sand or on concrete/],
    [/knock-out/, /can still be liquid inside[\s\S]*when a mould may be opened/],
    [/watering|weather|heap-state/, /flashes to steam|can erupt under/],
    [/mulling/, /drags in a hand/],
    [/bucket/, /takes backs and toes/],
    [/scale-check/, /breaks toes/],
    [/rig-tube|test-day/, /falling rammer crushes fingers/],
    [/rig-air/, /vessel under air pressure can burst/],
    [/clay-by-wash/, /Never caustic soda/],
    [/trial|squeeze/, /Over-wet|over-wet/],
    [/moisture|compactability|green|splitting|permeability|density|trial|test-day/, /stopped and unplugged/],
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
  metal: "2.4",
  alloy: "casting alloy",
  at: "720",
  section: "8",
  "scrap share": "30",
  degassed: "yes",
  note: "made up",
  as: "dry",
  clay: "0.25",
  "clay moisture": "9",
  method: "oven",
  "live clay": "7",
  gfn: "60",
  fines: "2",
  humidity: "60",
  wind: "2",
  "wind at": "10",
  hours: "16",
  want: "3.3",
  weather: "dry wind",
  faults: "gas holes",
  buckets: "8",
  bucket: "14.2",
  empty: "0.8",
  bag: "first",
  "reads to": "0.1",
  within: "0.2",
  bore: "50",
  tube: "120",
  rammer: "2",
  drop: "161",
  blows: "3",
  ruler: "0.5",
  column: "100",
  vessel: "20",
  "blank time": "0.5",
  blank: "2",
  loose: "150",
  packed: "270",
};
/** Where a key means something else on one card. */
const onCard: { readonly [card: string]: { readonly [key: string]: string } } = {
  weather: { air: "18", start: "3.4" },
  losses: { mass: "1.5" },
  "knock-out": { mass: "1.5" },
  "new-sand": { mass: "2" },
  watering: { water: "1.1" },
  mulling: { load: "5" },
  "clay-moisture": { damp: "52.4", dry: "47.6" },
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

const head: { readonly [section: string]: string } = {
  scales: "{ small scale: { reads to: 0.1 g, within: 0.2 g } }",
  "sieve sets": "{ home stack: { frame: 200 mm } }",
  rigs: "{ yard tube: { bore: 50.8 mm, tube: 120 mm, column: 113 mm, vessel: 20 l, blank time: 0.5 s, blank: 2 mm, ruler: 0.5 mm } }",
};

/** The card's lines with made-up figures, under what of the head they do not say themselves. */
function filledIn(card: Card): string {
  const minutes = [2, 4, 7, 10, 15, 20].map(String);
  const yaml = cardYaml(card, (key) => {
    const next = card.name === "mulling" && key === "minutes" ? minutes.shift() : undefined;
    const value = next ?? onCard[card.name]?.[key] ?? figures[key] ?? sieves[key];
    if (value === undefined) throw new Error(`${card.name}: no figure for ${key}`);
    return value;
  });
  const above = Object.entries(head).filter(([section]) => !yaml.startsWith(`${section}:`));
  return `format: 1\ninvented: yes\n${above.map((pair) => `${pair.join(": ")}\n`).join("")}${yaml}\n`;
}

/** What of the log a card's lines fill, by the log's own words. */
function heldBy(card: Card): string[] {
  const text = filledIn(card);
  const { value: log, issues } = readLog(text, { name: `${card.name}.yaml` });
  // A card's lines stand in a log that says more: its metal, its sands.
  const others = issues.filter(({ code }) => !["log/no-usual-ranges", "log/no-sands"].includes(code));
  expect(others, `${card.name}:\n${text}`).toEqual([]);
  const { batches, sands, events, remarks = [], mulling, castings, sheets, measured, weather, heap } = log!;
  const own = (section: string): string[] => (cardYaml(card).startsWith(`${section}:`) ? [section] : []);
  return [
    ...batches.flatMap(({ readings }) => readings.map(({ test: made }) => made)),
    ...events.map(({ kind }) => kind),
    ...remarks.map(() => "remark"),
    ...sands.map(() => "sand"),
    ...mulling.map(() => "mulling"),
    ...castings.map(() => "casting"),
    ...sheets.map(() => "sheet"),
    ...measured.map(() => "measured"),
    ...(weather ? ["weather"] : []),
    ...(heap ? ["heap"] : []),
    ...own("scales"),
    ...own("rigs"),
  ];
}

test("the lines of every card, filled in, are read without a complaint, and say something", () => {
  for (const card of cards) expect(heldBy(card).length, card.name).toBeGreaterThan(0);
});

test("every test, every kind of event and every check has its lines on a card", () => {
  const held = new Set(cards.flatMap(heldBy));
  expect([...held]).toEqual(
    expect.arrayContaining([
      ...testNames,
      ...eventKinds,
      ...["remark", "sand", "mulling", "casting", "measured", "weather", "heap", "scales", "rigs"],
    ]),
  );
  const names = cards.map(({ name }) => name);
  for (const kind of ["pour", "rebond", "new-sand", "watering", "losses", "knock-out", "test-day"])
    expect(names).toContain(kind);
});

test("a card for a heap's days has a column or a line for whatever its log lines ask, but for notes", () => {
  for (const card of cards.filter(
    ({ test: asked, yaml }) => !asked && /^(events|batches|measured)/.test(yaml!),
  )) {
    const asked: string[] = [];
    cardYaml(card, (key) => {
      asked.push(key);
      return "1";
    });
    const written = [...card.table!.columns, ...card.once.map(({ key }) => key)]
      .join("; ")
      .replaceAll("- ", "");
    const missing = asked.filter(
      (key) => !["name", "note", "water", "weather"].includes(key) && !written.includes(key),
    );
    expect(missing, card.name).toEqual([]);
  }
});

test("blanks stand in the lines on the page", () => {
  expect(pages.get("moisture")).toContain(
    "method: oven, scale: ____, dish: ____ g, damp: ____ g, dry: ____ g",
  );
});
