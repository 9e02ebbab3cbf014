// The stages of the first mix: a recipe, a moisture trial, the aim.

import type { GuideStage } from "./guide-stage.ts";
import { recipeCautions } from "./recipe-cautions.ts";
import { deadWeight, dryingSand, mixingDust, mullerStopped, overWet } from "./trial-cautions.ts";

const recipe: GuideStage = {
  name: "recipe",
  title: "The first recipe",
  purpose: "What to weigh for a first mix: sand, clay as it comes from the bag, and water in two doses.",
  takes: "An evening, and two hours of drying for the bag's own water.",
  owns: "A scale to 10 g, an oven or a pan, a muller or a tub and boots.",
  cautions: recipeCautions({ muller: true, additives: false }),
  steps: [
    "Dry a weighed portion of the clay and of the sand: what they hold of water already is taken off what you pour.",
    "A first mix has about 7 to 9 of clay per 100 of sand, and 3 to 4 % of water (common practice); the trial finds yours.",
    "Say what a share is of: per 100 of sand, of dry mix, or by weight. They are three different numbers.",
  ],
  cards: ["clay-moisture", "bucket"],
  lines: `recipe:
  basis: per 100 of sand
  clay: 8
  moisture: 3.4 %
  sand moisture: 0.5 %
  clay moisture: 9 % ± 2 %
  make: 30 kg
  muller pan: 10 kg`,
  begin: "heap",
  notebook: "recipe",
};

const moistureTrial: GuideStage = {
  name: "moisture trial",
  title: "The first moisture trial",
  purpose:
    "One mix at several waters: at which water it packs, holds together and breathes best, in your hands and on your rigs.",
  takes: "A long day for six batches, or two evenings.",
  owns: "What the stages before asked for, an oven or a pan for drying, and closed boxes for samples.",
  cautions: [overWet, mixingDust, mullerStopped, deadWeight, dryingSand],
  steps: [
    "Six batches at four waters or more, each from fresh sand, in shuffled order; one of them made twice.",
    "Change the water and nothing else: sand, clay, minutes mulled and stood, tube, hand.",
    "Moisture at once from each; then compactability, strength and the squeeze.",
    "Four batches tell a slope; five at least tell an aim.",
  ],
  cards: ["trial", "moisture", "squeeze"],
  lines: `trial: { axis: moisture }
batches:
  W1:
    date: 2026-04-11
    order: 3
    made of: { sand: 4 kg, bentonite: 350 g, bentonite moisture: 9 %, water: 84 g, scale: kitchen scale }
    mulled: 10 min
    stood: 30 min
    moisture: { method: oven, damp: 150.0 g, dry: 146.1 g, scale: kitchen scale }
    compactability: { filled: 120 mm, rammed: 79.2 mm, rig: home tube }
    green compression: { load: 14.6 kg, height: 50 mm, rig: home tube, scale: bathroom scale }
    squeeze: 2`,
  begin: "moisture-trial",
  notebook: "moisture-trial",
};

const aim: GuideStage = {
  name: "aim",
  title: "The aim",
  purpose:
    "A water, and a compactability to steer it by, where a new batch most surely meets what you want of the sand.",
  takes: "Ten minutes to write down; one more batch to try it.",
  owns: "A trial of five batches or more.",
  cautions: [overWet],
  steps: [
    "Write what you want as ranges; leave out what you do not know, and usual ranges stand in where there are any.",
    "Steer by compactability: a kitchen scale's moisture is the coarser of the two.",
    "Make the batch that the page names next, and see whether it falls where it should.",
  ],
  cards: ["compactability"],
  lines: `aims:
  compactability: 42 to 48 %
  green compression: 50 to 80 kPa`,
  begin: "moisture-trial",
  notebook: "moisture-trial",
};

export const trialStages: readonly GuideStage[] = [recipe, moistureTrial, aim];
