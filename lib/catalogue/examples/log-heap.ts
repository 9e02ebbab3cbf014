// What messages on the heap, recipe and season of a log may be said with.

import type { Examples } from "../example.ts";

export const logHeap: Examples = {
  "log/air-too-hot": { text: "55 °C" },
  "log/bucket-below-empty": { bucket: "0.8 kg", empty: "0.9 kg" },
  "log/bucket-of-unknown": { name: "gravel", known: "sand, clay, coal dust" },
  "log/buckets-not-whole": { text: "10.5" },
  "log/casting-above-flask": { casting: "90 L", flask: "14 L" },
  "log/event-faulty": { date: "2026-05-03", kind: "new sand" },
  "log/event-of-nothing": { known: "pour, lost, rebond, new sand, water, tested, weather, note" },
  "log/far-ahead": { date: "2062-05-02", next: "2026-05-03" },
  "log/humidity-fraction": { text: "0.6", value: 0.6 },
  "log/long-gap": { date: "2036-05-09", before: "2026-05-03", days: "3659" },
  "log/mass-for-share": { what: "clay", text: "8.7 lb", basis: "per 100 of sand" },
  "log/more-than-heap": { what: "water", text: "1100 kg", heap: "120 kg" },
  "log/more-weighed-than-there": { weighed: "2", count: "1" },
  "log/mulling-too-few": { name: "by hand", count: "3" },
  "log/no-bucket-weighed": { what: "coal dust", of: "coal dust" },
  "log/not-a-list": { what: "questions", line: "questions: [ { fault: gas holes, against: moisture } ]" },
  "log/out-of-order": { date: "2026-01-03", before: "2026-02-21" },
  "log/pan-above-heap": { pan: "400 kg", make: "120 kg" },
  "log/price-incomplete": { name: "bentonite", missing: "for" },
  "log/price-of-unknown": {
    name: "cole dust",
    near: "coal dust",
    known: "sand, bentonite, clay, Coppice Lane sand, Brickfield sand, Third sand, coal dust",
  },
  "log/share-basis": {
    what: "live clay",
    text: "8 %",
    ofSand: "7.41",
    ofMix: "8",
    ofDamp: "8.29",
    remedy: "Write the one that is meant, e.g. `live clay: 8 % of dry mix`.",
  },
  "log/share-too-large": { what: "clay", text: "870" },
  "log/state-of-nothing": { known: "moisture, live clay, compactability, green compression, gfn, fines" },
  "log/two-bases": { what: "clay", text: "8 % of dry mix", basis: "per 100 of sand" },
  "log/undated": { what: "casting" },
  "log/unknown-share-basis": { what: "live clay", text: "8 % of the heap" },
  "log/water-by-share": { basis: "per 100 of sand" },
};
