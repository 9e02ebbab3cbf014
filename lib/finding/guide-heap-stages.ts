// The stages of a season: the heap and its diary, castings, a question and its write-up.

import { castingCautions } from "./casting-cautions.ts";
import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import type { GuideStage } from "./guide-stage.ts";
import { frozenIsHot, waterOnHotSand } from "./heat-cautions.ts";
import { mixingDust, mullerStopped, overWet } from "./trial-cautions.ts";

const heap: GuideStage = {
  name: "heap",
  title: "The heap and its diary",
  purpose:
    "What is in the heap, what each pour burns and what is put back, and whether its figures are steady or have moved.",
  takes: "An hour on the same day of every week; five minutes after each pour.",
  owns: "A bathroom scale and a bucket, a bin or a sheet over the heap.",
  cautions: [waterOnHotSand, frozenIsHot, mixingDust, mullerStopped],
  steps: [
    "Weigh the heap in buckets once, and write down all that leaves it or goes into it.",
    "Test on the same weekday, by one method and one rig, before anything is added. Eight values make a chart.",
    "Say in `wanted` what the heap shall have; the page tells what brings it back.",
  ],
  cards: ["bucket", "test-day", "pour", "knock-out", "rebond", "new-sand", "watering", "losses", "weather"],
  lines: `heap: { mass: 56 kg ± 2 kg, clay kind: sodium bentonite, shape: heap, cover: sheet }
wanted: { moisture: 3.4 %, live clay: 7 % of dry mix }
remind: { moisture: 7 days, compactability: 7 days }
events:
  - { date: 2026-05-02, tested: { moisture: 3.4 %, compactability: 45 %, green compression: 70 kPa } }
  - { date: 2026-05-02, pour: { metal: 2.4 kg, section: 8 mm } }
  - { date: 2026-05-03, lost: 1.5 kg }`,
  begin: "heap",
  notebook: "diary",
};

const castings: GuideStage = {
  name: "castings",
  title: "Castings looked over",
  purpose:
    "What was found on castings, beside the sand of the day and the pour: where to look next. Few castings prove little.",
  takes: "A quarter of an hour a pour, before fettling.",
  owns: "Daylight, a lens, a needle.",
  cautions: castingCautions,
  steps: [
    "Every casting of the pour, also those without a fault: `faults: none`.",
    "Name what you want to know before you look: at most three pairs.",
    "Causes in metal, pouring and pattern come before those in the sand for most faults: write temperature, scrap and degassing too.",
  ],
  cards: ["castings", "pour"],
  lines: `events:
  - { date: 2026-05-02, pour: { metal: 2.1 kg, at: 715 °C, section: 8 mm, scrap share: 20 %, degassed: yes } }
castings:
  - { date: 2026-05-02, name: lamp base, faults: none }
  - { date: 2026-05-02, name: hinge, faults: [ gas holes ] }
questions:
  - { fault: gas holes, against: moisture }`,
  begin: "castings",
  notebook: "castings",
};

export const othersRepeat: Caution = {
  code: "caution/others-repeat",
  trigger: "because others will repeat what a write-up tells",
  text: "Whoever repeats a method is hurt by what it leaves out: what could hurt stands in it, before the step that brings it.",
  points: [
    "Silica dust, drying, falling weights, a muller's wheels and over-wet sand under metal are named at their steps; readers have other rigs and other local rules.",
    ...overWet.points.slice(2),
  ],
  defers: localRules,
};

const writeUp: GuideStage = {
  name: "write-up",
  title: "A question, and its write-up",
  purpose:
    "One question of your own answered so that somebody else can repeat it: what was changed, what was held, how it was measured, what stays open.",
  takes: "An evening of writing, after the batches.",
  owns: "A log with the batches of one question.",
  cautions: [othersRepeat],
  steps: [
    "One question, one thing changed; what was held alike is written down as well.",
    "How it was made and measured, in the order of the bench, so that a reader needs nobody to ask.",
    "What remains open, and the next batch that would close it.",
  ],
  cards: ["trial"],
  lines: `experiment:
  question: Does fifteen minutes of mulling give more green strength than eight?
  changed: minutes mulled
  held: [ sand and clay, water, compactability within two points ]
  measured: [ three specimens of each batch, loaded within two minutes ]
  open: whether twenty-five minutes would give more`,
  begin: "write-up",
  notebook: "write-up",
};

export const heapStages: readonly GuideStage[] = [heap, castings, writeUp];
