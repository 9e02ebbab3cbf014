// Cards for the heap's own days: tests, weather, mulling, castings looked over.

import { castingFaults } from "../sand/casting-faults.ts";
import { testDayHazard } from "./card-hazards.ts";
import * as hazard from "./card-hazards-heap.ts";
import type { Card } from "./card-kinds.ts";

const scale = { key: "scale", unit: "", says: "which one, what it reads to" } as const;
const rig = { key: "rig", unit: "", says: "tube: its name in the log" } as const;

const testDay: Card = {
  name: "test-day",
  title: "Heap test day",
  does: "moisture, compactability and strength of the heap, as read, a row a day",
  hazard: testDayHazard,
  rig: "The same weekday, the same tube, scale and hand, before anything is added. Eight days by one method make a chart with limits.",
  steps: [
    "Take sand from three places, half an arm deep, into a closed box; riddle it together.",
    "Moisture first: weigh the portion at once (card: moisture). Then compactability, then strength.",
    "Write what was read, not what it comes to: the log works it out. Repeats stand as a list.",
    "Nothing that was not tested is guessed: leave the box empty.",
  ],
  once: [
    { key: "batch", unit: "", says: "a name with its day: heap 05-09" },
    scale,
    { ...scale, says: "for the load" },
    rig,
    { key: "method", unit: "", says: "oven, pan or microwave" },
  ],
  table: {
    columns: [
      "date",
      "damp, g",
      "dry, g",
      "filled, mm",
      "rammed, mm",
      "load, kg",
      "height, mm",
      "squeeze",
      "who",
    ],
    rows: 8,
  },
  yaml: `batches:
  ____:
    date: ____
    moisture: { method: ____, damp: ____ g, dry: ____ g, scale: ____ }
    compactability: { filled: ____ mm, rammed: ____ mm, rig: ____ }
    green compression: { load: ____ kg, height: ____ mm, rig: ____, scale: ____ }
    squeeze: ____`,
};

const heapState: Card = {
  name: "heap-state",
  title: "State of the heap",
  does: "the heap's figures where they are worked out already, or come from elsewhere",
  hazard: hazard.statedHazard,
  rig: "For numbers that you worked out, read off an instrument, or got from another bench. Raw readings go on the card test-day, never both.",
  steps: [
    "`tested` stands among what happens; `measured` is what the heap's page mends it from: the newest counts.",
    "Moisture is of damp mass. Clay says of what: `% of dry mix` is usual.",
    "A figure with its ±, such as 6.8 ± 0.5, keeps its doubt; without one the page says that it is missing.",
    "Clay by wash is more than live clay: silt counts with it, so it does not stand in for it.",
  ],
  once: [{ key: "who", unit: "", says: "whose bench, which instrument" }],
  table: {
    columns: [
      "date",
      "moisture, %",
      "live clay, % of dry mix",
      "compactability, %",
      "green compression, kPa",
      "gfn",
      "fines, %",
    ],
    rows: 11,
  },
  yaml: `events:
  - { date: ____, tested: { moisture: ____ %, compactability: ____ %, green compression: ____ kPa } }
measured:
  - { date: ____, moisture: ____ %, live clay: ____ % of dry mix, gfn: ____, fines: ____ % }`,
};

const weather: Card = {
  name: "weather",
  title: "Weather and standing",
  does: "the hours that a heap stands, and the air that dries it",
  hazard: hazard.standingHazard,
  rig: "A thermometer and a hygrometer where the heap lies, out of the sun; or a forecast, whose wind blows at 10 m.",
  steps: [
    "`start` is the moisture in the evening, `want` what it shall have in the morning, both of damp mass.",
    "Wind over the sand itself: leave `wind at` out. From a forecast: `wind at: 10 m`.",
    "`sand` is its temperature, if it is warmer than the air: warm sand dries faster.",
    "Test in the morning and write it beside the forecast: a few mornings tell how far to trust it.",
  ],
  once: [
    { key: "shape", unit: "", says: "heap or bin" },
    { key: "cover", unit: "", says: "none, sheet or lid" },
  ],
  table: {
    columns: [
      "date",
      "air, °C",
      "humidity, %",
      "wind, m/s",
      "hours",
      "start, %",
      "want, %",
      "in the morning, %",
    ],
    rows: 11,
  },
  yaml: `weather: { air: ____ °C, humidity: ____ %, wind: ____ m/s, wind at: ____ m, hours: ____, start: ____ %, want: ____ % }
events:
  - { date: ____, weather: ____ }`,
};

const reading =
  "      - { minutes: ____, green compression: ____ kPa, compactability: ____ %, moisture: ____ % }";

const mulling: Card = {
  name: "mulling",
  title: "Readings while mulling",
  does: "strength against minutes, from one load without more water",
  hazard: hazard.mullingHazard,
  rig: "One load, all its water in from the start, and six samples: the first after two minutes, each about half as long again as the one before.",
  steps: [
    "Stop the muller and cut its supply for every sample; the minutes count only while it turns.",
    "Three specimens a sample, tested at once (card: green-compression); write the mean here and the three on their own card.",
    "Moisture of the first and the last sample: sand that dries as it is mulled gains strength that is not mulling.",
    "Go on until two samples in a row are alike. Four times are the fewest, six tell a plateau.",
  ],
  once: [
    { key: "name", unit: "", says: "by hand, or the machine" },
    { key: "load", unit: "kg", says: "damp, in the pan" },
    { key: "date", unit: "", says: "year-month-day" },
  ],
  table: {
    columns: ["minutes", "load at break, kg", "green compression, kPa", "compactability, %", "moisture, %"],
    rows: 7,
  },
  yaml: `mulling:
  ____:
    load: ____ kg
    readings:
${[reading, reading, reading, reading].join("\n")}`,
};

const castings: Card = {
  name: "castings",
  title: "Castings looked over",
  does: "what was found on each casting, also nothing",
  hazard: hazard.inspectionHazard,
  rig: "Daylight, a lens, a needle for holes. The same eyes each time, before grinding hides what was there.",
  steps: [
    `Faults by these names: ${castingFaults.join(", ")}. \`none\` where you looked and found nothing; leave it out where you did not look.`,
    "Every casting of the pour, the good ones too: a fault is a share of what was cast.",
    "Of which pour, where the day had two: `of pour: 1`.",
    "Name beforehand what you want to know: `questions: [ { fault: gas holes, against: moisture } ]`. Three at most: ten castings prove little.",
  ],
  once: [
    { key: "who", unit: "", says: "whose eyes" },
    { key: "metal", unit: "kg", says: "of the pour, if its line is not in the log yet" },
  ],
  table: { columns: ["date", "of pour", "name", "faults, or none", "where on it"], rows: 11 },
  yaml: `events:
  - { date: ____, pour: { metal: ____ kg } }
castings:
  - { date: ____, name: ____, faults: [ ____ ], note: ____ }
  - { date: ____, name: ____, faults: none }`,
};

export const heapCards: readonly Card[] = [testDay, heapState, weather, mulling, castings];
