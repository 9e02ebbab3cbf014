// Ways in by the heap: what it is made of and what happens to it, its tests over months, its castings.

import { type Beginning, whoAndScale } from "./beginning.ts";

const hazard =
  "Water on hot sand scalds as steam, and water under metal throws it out: cold sand only, and never onto a wet floor.";

export const heap: Beginning = {
  name: "heap",
  says: "a recipe, what was poured, lost and put in, and tonight's weather",
  notebook: "heap",
  cards: ["bucket", "pour", "rebond", "weather"],
  does: "A heap: its recipe, what happens to it day by day, and the weather that dries it.",
  hazard,
  body: `${whoAndScale("My heap")}
# What to weigh: mullbook write recipe, with this file's name after it.
recipe:
  basis: by weight
  sand: 50 kg
  clay: 4.4 kg                # as it comes from the bag
  water: 1.6 kg
  sand moisture: 0.5 %        # what the sand holds already
  clay moisture: 9 % ± 2 %    # what the bagged clay holds (card clay-moisture); often 6 to 12 %
  muller pan: 12 kg           # what one load may be

heap: { mass: 56 kg ± 2 kg, clay kind: sodium bentonite, shape: heap, cover: sheet }   # weigh it in buckets (card bucket)
wanted: { moisture: 3.4 %, live clay: 7 % of dry mix }   # moisture is of damp mass; clay says of what

# What happens, in order of its days: a line a thing.
# section: the wall that holds most of the casting. scrap share: what was neither ingot nor your own returns.
events:
  - { date: 2026-05-02, tested: { green compression: 70 kPa, compactability: 45 %, moisture: 3.4 % } }
  - { date: 2026-05-02, pour: { metal: 2.4 kg, at: 720 °C, section: 8 mm, scrap share: 40 % } }
  - { date: 2026-05-03, lost: 1.5 kg }                    # swept up or thrown out, dry
  - { date: 2026-05-03, water: 0.8 kg }
  - { date: 2026-05-09, pour: { metal: 2.1 kg, at: 715 °C, section: 8 mm, scrap share: 30 % } }
  - { date: 2026-05-10, rebond: { clay: 0.25 kg, clay moisture: 9 % } }
  - { date: 2026-05-10, new sand: 2 kg }
  - { date: 2026-05-10, weather: "dry east wind" }        # or note: anything else of a day

# What a test of the heap said, by date: the page mends the heap from the newest.
measured:
  - { date: 2026-05-16, moisture: 2.7 % ± 0.2 %, live clay: 6.4 % of dry mix ± 0.5 % }

# hours: how long the heap stands. start: its moisture in the evening, want: what it shall have in the morning.
weather: { air: 18 °C, humidity: 60 %, wind: 2 m/s, wind at: 10 m, hours: 16, start: 3.4 %, want: 3.3 % }
planned: { pours: 20, metal: 2.5 kg, section: 8 mm, every: 7 days }
`,
};

/** Ten Saturdays; made up. */
const tested: readonly (readonly [day: string, dry: string, compactability: string, strength: string])[] = [
  ["2026-03-07", "145.0", "45", "68"],
  ["2026-03-14", "145.2", "44", "69"],
  ["2026-03-21", "144.8", "46", "66"],
  ["2026-03-28", "145.1", "45", "67"],
  ["2026-04-04", "145.3", "43", "70"],
  ["2026-04-11", "144.9", "46", "66"],
  ["2026-04-18", "145.0", "45", "68"],
  ["2026-04-25", "145.2", "44", "67"],
  ["2026-05-02", "144.9", "45", "65"],
  ["2026-05-09", "145.1", "45", "66"],
];

const testDay = ([day, dry, compactability, strength]: (typeof tested)[number]): string =>
  `  heap ${day.slice(5)}: { date: ${day}, moisture: { method: oven, damp: 150.0 g, dry: ${dry} g, scale: kitchen scale }, compactability: ${compactability} ± 2 %, green compression: ${strength} ± 4 kPa }\n`;

export const diary: Beginning = {
  name: "diary",
  says: "one heap, tested on the same weekday",
  notebook: "diary",
  cards: ["test-day", "pour"],
  does: "A diary of the heap: the same tests on the same weekday, and what happened between them.",
  hazard: "A hand in a muller is lost before it is felt: stop it, unplug it, and only then take the sample.",
  body: `${whoAndScale("Diary of my heap")}
heap: { mass: 56 kg ± 2 kg }
remind: { moisture: 7 days, compactability: 7 days, green compression: 7 days }   # how often each is meant to be tested

# A test day is a batch: raw readings, or numbers that you worked out, with their ±. Eight of a kind make a chart.
batches:
${tested.map(testDay).join("")}
events:
  - { date: 2026-03-14, pour: { metal: 2.3 kg } }
  - { date: 2026-04-04, pour: { metal: 2.5 kg } }
  - { date: 2026-04-05, rebond: { clay: 0.25 kg } }
  - { date: 2026-04-25, weather: "first hot days, the door open" }
`,
};

export const castings: Beginning = {
  name: "castings",
  says: "what was found on castings, beside the sand of the day",
  notebook: "castings",
  cards: ["castings", "pour", "test-day"],
  does: "Castings: what was found at inspection, beside the pour and the sand of that day.",
  hazard:
    "Burnt-on sand that is ground or brushed dry becomes silica dust: knock it off wet, with a mask and goggles on.",
  body: `${whoAndScale("My castings")}
heap: { mass: 56 kg ± 2 kg }

batches:                      # the sand that was poured on, tested that day
  heap 05-02: { date: 2026-05-02, moisture: 3.4 ± 0.2 %, compactability: 44 ± 2 %, green compression: 70 ± 5 kPa, permeability: 80 ± 6 }
  heap 05-09: { date: 2026-05-09, moisture: 4.2 ± 0.2 %, compactability: 49 ± 2 %, green compression: 62 ± 5 kPa, permeability: 73 ± 6 }
  heap 05-16: { date: 2026-05-16, moisture: 3.3 ± 0.2 %, compactability: 43 ± 2 %, green compression: 72 ± 5 kPa, permeability: 84 ± 6 }
  heap 05-23: { date: 2026-05-23, moisture: 4.4 ± 0.2 %, compactability: 51 ± 2 %, green compression: 59 ± 5 kPa, permeability: 71 ± 6 }

events:
  - { date: 2026-05-02, pour: { metal: 2.1 kg, at: 715 ± 10 °C, section: 8 mm, scrap share: 20 %, degassed: yes } }
  - { date: 2026-05-09, pour: { metal: 2.1 kg, at: 730 ± 10 °C, section: 8 mm, scrap share: 50 %, degassed: no } }
  - { date: 2026-05-16, pour: { metal: 2.3 kg, at: 720 ± 10 °C, section: 8 mm, scrap share: 30 %, degassed: yes } }
  - { date: 2026-05-23, pour: { metal: 2.0 kg, at: 725 ± 10 °C, section: 8 mm, scrap share: 40 %, degassed: yes } }

# faults: none where you looked and found nothing. Names of faults: mullbook card castings.
castings:
  - { date: 2026-05-02, name: lamp base, faults: none }
  - { date: 2026-05-09, name: lamp base, faults: [ gas holes ] }
  - { date: 2026-05-16, name: hinge, faults: none }
  - { date: 2026-05-23, name: lamp base, faults: [ gas holes, swells ] }

# The few pairs that you want to know of, named before you look.
questions:
  - { fault: gas holes, against: moisture }
`,
};
