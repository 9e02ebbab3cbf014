// The cards of the tests: rig, steps, and what to write once.

import { squeezeSteps } from "../sand/squeeze.ts";
import { washPlan } from "../sand/wash.ts";
import * as draw from "./card-drawings.ts";
import * as hazard from "./card-hazards.ts";
import type { Card } from "./card-kinds.ts";
import { ram, rig, scale, tare, time } from "./card-once.ts";
import { permeabilityCards } from "./card-permeability.ts";

const atOnce =
  "Test within two minutes of ramming: drying raises strength. Make three specimens and write all three.";

const moisture: Card = {
  name: "moisture",
  title: "Moisture",
  does: "water in % of the damp mass, by oven, pan or microwave",
  hazard: hazard.dryingHazard,
  rig: "A dish and the finest scale in the house. At 0.1 g, 150 g of sand tell moisture to about 0.1 %.",
  drawing: draw.moistureDrawing,
  steps: [
    "Take 100 to 200 g from the middle of the batch, at once into a closed box.",
    "Weigh it damp. Spread it thin; dry at 105 °C, or in a pan or microwave in short spells, stirring.",
    "Cool it under a lid and weigh; dry one spell more and weigh again. Stop when two weighings differ by less than 0.05 % of the sample.",
    "Keep to one method in a trial: clay lets go of more water in a pan than in an oven.",
  ],
  formula: "100 (damp − dry) / damp, both without the dish",
  test: { name: "moisture", method: "oven" },
  once: [scale, tare, time, { key: "method", unit: "", says: "oven, pan or microwave" }],
};

const compactability: Card = {
  name: "compactability",
  title: "Compactability",
  does: "height that loose sand loses under three blows, in %",
  hazard: hazard.rammerHazard,
  rig: "A tube of about 50 mm bore and 120 mm height on a flat foot, and a rammer: 2 kg falling 161 mm, or any weight with 3.16 J a blow.",
  drawing: draw.compactabilityDrawing,
  steps: [
    "Let the sand fall through a 6 mm riddle into the tube until it heaps over the rim; do not shake or press it.",
    "Strike it off level, from the middle to each side.",
    "Three blows, with a rest between them. Measure from the foot to the sand.",
    "Clean and lightly oil the tube: a dry wall reads high. Do it three times and write all three.",
  ],
  formula: "100 (filled − rammed) / filled",
  test: { name: "compactability", method: "height" },
  once: [rig, { key: "sand", unit: "°C", says: "temperature of the sand" }, time],
};

const pressed: Card = {
  name: "compactability-pressed",
  title: "Compactability by pressing",
  does: "height that loose sand loses under a steady press, in %",
  hazard: hazard.pressHazard,
  rig: "A tube of 50 mm bore and 100 mm height on a flat foot, a plunger that slides freely, and a press that gives 100 N/cm²: about 200 kg on 50 mm.",
  drawing: draw.pressedDrawing,
  steps: [
    "Let the sand fall through a 6 mm riddle into the tube until it heaps over the rim; do not shake it, and strike it off level.",
    "Press once, evenly, until the force stands at 100 N/cm², and hold it for a breath.",
    "Measure from the foot to the sand. Do it three times and write all three.",
    "Keep to pressing or to ramming in a trial: the two are different tests and never stand on one curve.",
  ],
  formula: "100 (filled − pressed) / filled",
  test: { name: "compactability", method: "pressed" },
  once: [rig, { key: "sand", unit: "°C", says: "temperature of the sand" }, time],
};

const weighed: Card = {
  name: "compactability-weighed",
  title: "Compactability by two weighings",
  does: "the same tube filled loose and filled rammed, each weighed, in %",
  hazard: hazard.rammerHazard,
  rig: "A tube on a flat foot, a rammer and a scale; no ruler. Both fillings end level with the rim.",
  steps: [
    "Let the sand fall through a 6 mm riddle into the tube until it heaps over the rim; strike it off and weigh it: loose.",
    "Fill the same tube in layers, three blows on each, until it stands above the rim; cut it off level and weigh it: packed.",
    "Keep to one way in a trial: weighing and height are near each other, not the same.",
    "Clean the tube between. Do it three times and write all three.",
  ],
  formula: "100 (packed − loose) / packed",
  test: { name: "compactability", method: "two weighings" },
  once: [scale, tare, rig, time],
};

const loaded = (
  name: "green compression" | "green shear" | "splitting",
  more: Pick<Card, "title" | "does" | "rig" | "drawing" | "formula">,
  set: string,
): Card => ({
  name: name.replace(" ", "-"),
  hazard: hazard.loadHazard,
  steps: [
    ram(", a weighed amount each time"),
    `${set} Blocks stand ready to catch the load.`,
    "Let water or shot run into the pail slowly, a kilogram in about ten seconds, and stop it the moment the specimen breaks.",
    "Weigh everything that lay on it: pail, water, disc.",
    atOnce,
  ],
  test: { name },
  once: [scale, tare, rig, time],
  ...more,
});

const strengths: readonly Card[] = [
  loaded(
    "green compression",
    {
      title: "Green compression",
      does: "dead weight on a disc until the specimen breaks, kPa",
      rig: "On a 50.8 mm specimen 1 kg is 4.84 kPa, on 50 mm 4.99 kPa; 50 kPa need about 10 kg, 100 kPa about 20 kg.",
      drawing: draw.compressionDrawing,
      formula: "load × 9.807 N/kg over the face of the specimen, 4 F / (π D²)",
    },
    "Push it out, stand it upright on a plate, and lay the disc and the empty pail on it, in the middle.",
  ),
  loaded(
    "green shear",
    {
      title: "Green shear",
      does: "dead weight across the axis until the specimen shears, kPa",
      rig: "Two short sleeves hold a half of the specimen each; one is fixed, the pail hangs on the other.",
      drawing: draw.shearDrawing,
      formula: "load × 9.807 N/kg over the face of the specimen, one plane, 4 F / (π D²)",
    },
    "Slide it into the two sleeves so that their gap lies at its middle, and hang the empty pail on the free one.",
  ),
  loaded(
    "splitting",
    {
      title: "Splitting strength",
      does: "a line of load on the side of a specimen until it splits, kPa",
      rig: "The specimen lies on its side between two strips; it needs about half the weight of compression for the same figure in kPa: 1 kg is 2.42 kPa on 50.8 × 50.8 mm.",
      drawing: draw.splittingDrawing,
      formula: "2 F / (π D H)",
    },
    "Lay it on its side on a strip 5 mm wide, a second strip on top, a board and the empty pail on that.",
  ),
];

const density: Card = {
  name: "density",
  title: "Density of the specimen",
  does: "mass over volume of a rammed specimen, g/cm³",
  hazard: hazard.rammerHazard,
  rig: "Scale and caliper. Rammed silica sand has 1.3 to 1.8 g/cm³; strengths at densities more than 3 % apart are not compared.",
  drawing: draw.densityDrawing,
  steps: [
    ram(", a weighed amount"),
    "Measure the height at three places and take the middle; push the specimen out and weigh it.",
    "Three specimens within 5 % of each other were rammed alike.",
  ],
  formula: "4 m / (π D² H)",
  test: { name: "density" },
  once: [scale, tare, rig, time],
};

const minutes = (celsius: number) => {
  const { seconds } = washPlan({ celsius });
  const text = `${Math.floor(seconds / 60)} min ${String(Math.round(seconds % 60)).padStart(2, "0")} s`;
  return `${text} at ${celsius} °C`;
};

const clayByWash: Card = {
  name: "clay-by-wash",
  title: "Clay by wash",
  does: "what stays afloat when sand settles, in % of the dry mix",
  hazard: hazard.washHazard,
  rig: "A jar at least 180 mm high, a mark 127 mm under the water line, a siphon that ends at the lower mark.",
  drawing: draw.washDrawing,
  steps: [
    "Dry about 50 g at 105 °C and weigh it. Stir it five minutes in water with a spoon of washing soda or pyrophosphate.",
    `Fill up, stir, let it settle: the first time twice as long as after that. The wait for 127 mm: ${[10, 15, 20, 25].map(minutes).join(", ")}.`,
    "Draw off 127 mm with the siphon, fill up with clean water, stir, wait, draw off, until the water stays clear.",
    "Dry the grain that is left until it loses no more mass, and weigh it.",
  ],
  formula: "100 (dry − grain) / dry; silt counts with it, so it is more than live clay",
  test: { name: "clay by wash" },
  once: [scale, tare, time, { key: "water", unit: "°C", says: "temperature of the water" }],
};

const squeeze: Card = {
  name: "squeeze",
  title: "The squeeze",
  does: "what the hand says, as one of five steps",
  hazard: hazard.squeezeHazard,
  rig: "The same hand each time, and a compactability of the same sand beside it: that is what calibrates the hand.",
  drawing: draw.squeezeDrawing,
  steps: [
    "Squeeze a fistful once, hard; open the hand; break the lump in the middle.",
    ...squeezeSteps.map(({ step, name, shows }) => `Step ${step}, ${name}. ${shows}`),
  ],
  test: { name: "squeeze" },
  once: [{ key: "hand", unit: "", says: "whose" }, time],
};

export const testCards: readonly Card[] = [
  moisture,
  compactability,
  pressed,
  weighed,
  ...strengths,
  ...permeabilityCards,
  density,
  clayByWash,
  squeeze,
];
