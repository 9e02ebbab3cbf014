// An invented log of a heap and its season, every section of it, to read and to spoil.

import { readLog } from "../../lib/log/read-log.ts";

export const seasonLog = `format: 1
title: A heap in a shed
invented: yes
metal: aluminium
bond: bentonite
sands:
  Coppice Lane sand: { state: new }
  Brickfield sand: { state: new }
  Third sand: { state: new }
heap:
  mass: 120 kg ± 5 kg
  clay kind: sodium bentonite
  shape: heap
  cover: sheet
recipe:
  basis: per 100 of sand
  clay: 8.7
  additives: { coal dust: 0.5 }
  moisture: 3.4 % of damp mass
  sand moisture: 0.5 %
  clay moisture: 9 %
  make: 120 kg
  muller pan: 12 kg
  bucket of: { sand: 13.5 kg ± 0.3 kg, clay: 8.6 kg }
prices:
  currency: pounds
  sand: { cost: 9.50, for: 25 kg }
  bentonite: { cost: 14, for: 25 kg }
  coal dust: { cost: 8, for: 10 kg }
wanted: { moisture: 3.4 % of damp mass, live clay: 8 % of dry mix, gfn: 60 }
measured:
  - { date: 2026-05-09, moisture: 2.6 %, live clay: 6.8 % of dry mix ± 0.5 %, gfn: 63, fines: 4 % }
weather: { air: 18 °C, humidity: 60 %, wind: 1.8 km/h, hours: 16, start: 3.8 %, want: 3.5 % }
flask: { volume: 14 L, casting volume: 0.9 L }
events:
  - { date: 2026-05-02, pour: { metal: 2.4 kg, alloy: "casting alloy", at: 720 °C, section: 8 mm, scrap share: 40 % } }
  - { date: 2026-05-02, lost: 1.5 kg }
  - { date: 2026-05-03, rebond: { clay: 0.25 kg, clay moisture: 9 % } }
  - { date: 2026-05-03, new sand: 2 kg }
  - { date: 2026-05-03, water: 1.1 kg }
  - { date: 2026-05-09, tested: { green compression: 62 kPa, compactability: 44 %, moisture: 3.3 % } }
planned: { pours: 30, metal: 2.5 kg, section: 8 mm, every: 7 days }
mulling:
  by hand:
    load: 5 kg
    readings:
      - { minutes: 2, green compression: 38 kPa }
      - { minutes: 4, green compression: 51 kPa }
      - { minutes: 8, green compression: 60 kPa }
      - { minutes: 15, green compression: 64 kPa }
muller: { motor: 1450 rpm, reduction: 60, pan diameter: 500 mm, wheel width: 60 mm, wheels: 2, load: 12 kg, minutes: 12 }
blend:
  of: [ Coppice Lane sand, Brickfield sand ]
  to: { gfn: 60 }
`;

export const readSeason = (text: string = seasonLog) => readLog(text, { name: "season.yaml" });

/** The season with one piece of text put in another's place. */
export function spoiltSeason(from: string, to: string) {
  if (!seasonLog.includes(from)) throw new Error(`${from} is not in the season's log`);
  const text = seasonLog.replace(from, () => to);
  return { text, ...readSeason(text) };
}
