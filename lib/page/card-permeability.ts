// The cards of permeability: one test by four rigs.

import * as draw from "./card-drawings.ts";
import * as hazard from "./card-hazards.ts";
import type { Card } from "./card-kinds.ts";
import { ram, rig, scale, tare, time } from "./card-once.ts";

const grease =
  "Grease the wall of the tube thinly, or air slips past the specimen; plug the tube once and look that nothing moves.";
const blank =
  "Run the rig once without a specimen: write the pressure or the time that it takes by itself under `rigs:`.";

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

export const permeabilityCards: readonly Card[] = [
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
