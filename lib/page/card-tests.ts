// The cards of the tests: rig, steps, and what to write once.

import { squeezeSteps } from "../sand/squeeze.ts";
import { washPlan } from "../sand/wash.ts";
import * as draw from "./card-drawings.ts";
import * as hazard from "./card-hazards.ts";
import type { Card, CardBox } from "./card-kinds.ts";

const scale: CardBox = { key: "scale", unit: "", says: "which one, what it reads to, checked within" };
const tare: CardBox = { key: "tare", unit: "g", says: "empty dish, tube or pail; set to zero or taken off" };
const rig: CardBox = { key: "rig", unit: "", says: "its name in the log" };
const time: CardBox = { key: "time", unit: "h:min", says: "mulling ended / tested" };

const ram = (mass = "") =>
  `Riddle the sand into the tube${mass}, set the rammer on it, and give three blows with a short rest between them.`;
const atOnce =
  "Test within two minutes of ramming: drying raises strength. Make three specimens and write all three.";
const grease =
  "Grease the wall of the tube thinly, or air slips past the specimen; plug the tube once and look that nothing moves.";
const blank =
  "Run the rig once without a specimen: write the pressure or the time that it takes by itself under `rigs:`.";

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

const flow = (
  name: "constant head" | "aspirator" | "falling column" | "bleeding vessel",
  more: Pick<Card, "does" | "rig" | "drawing" | "formula" | "hazard">,
  run: readonly string[],
): Card => ({
  name: `permeability-${name.replace(" ", "-")}`,
  title: `Permeability by ${name}`,
  steps: [
    `${ram(", a weighed amount")} Leave the specimen in the tube and measure its height.`,
    grease,
    ...run,
    blank,
  ],
  test: { name: "permeability", method: name },
  once: [rig, scale, tare, time],
  ...more,
});

const permeabilities: readonly Card[] = [
  flow(
    "constant head",
    {
      does: "a floating can presses air through the specimen",
      rig: "A can floats upside down in a pail of water; its weight over its area is the pressure: 785 g on 100 mm across is 100 mm of water.",
      drawing: draw.constantHeadDrawing,
      formula: "V H / (p A t): ml, cm, cm of water, cm², minutes; to 20 °C",
      hazard: hazard.pressureHazard,
    },
    [
      "Read the pressure on a U-tube at the specimen, 50 to 100 mm of water. Time how long a marked volume of air takes.",
    ],
  ),
  flow(
    "aspirator",
    {
      does: "water drains from a bottle and draws air through the specimen",
      rig: "The water that runs out is the air that went through; a U-tube beside the specimen shows the suction.",
      drawing: draw.aspiratorDrawing,
      formula: "V H / (p A t): ml, cm, cm of water, cm², minutes; to 20 °C",
      hazard: hazard.suctionHazard,
    },
    ["Open the drain until the U-tube stands still at 50 to 100 mm. Catch and time at least half a litre."],
  ),
  flow(
    "falling column",
    {
      does: "a sinking column of water pushes air through the specimen",
      rig: "An open column of known bore; write its bore under `rigs:`. With 100 cm² of water, from 200 to 100 mm, a number of 50 takes about 21 s.",
      drawing: draw.fallingColumnDrawing,
      formula: "a H ln(from / to) / (A t): cm², cm, cm², minutes; to 20 °C",
      hazard: hazard.pressureHazard,
    },
    ["Fill the column, open the tap, start the watch at the upper mark and stop it at the lower one."],
  ),
  flow(
    "bleeding vessel",
    {
      does: "a closed vessel bleeds down through the specimen",
      rig: "A drum of known volume, a tap, and a U-tube of water that shows the pressure and limits it.",
      drawing: draw.bleedingVesselDrawing,
      formula: "V H ln(from / to) / (A t P): ml, cm, cm², minutes, air pressure in cm of water; to 20 °C",
      hazard: hazard.pressureHazard,
    },
    [
      "Blow the vessel up by mouth or with water to about 200 mm, close it, wait until the level stands still.",
      "Open the tap, start the watch at `from`, stop it at `to`. Under three seconds: take a larger vessel.",
    ],
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
  ...permeabilities,
  density,
  clayByWash,
  squeeze,
];
