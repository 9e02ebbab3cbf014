// What the cards of the tests share: the boxes that are written once, and how a specimen is rammed.

import type { CardBox } from "./card-kinds.ts";

export const scale: CardBox = { key: "scale", unit: "", says: "which one, what it reads to, checked within" };
export const tare: CardBox = {
  key: "tare",
  unit: "g",
  says: "empty dish, tube or pail; set to zero or taken off",
};
export const rig: CardBox = { key: "rig", unit: "", says: "its name in the log" };
export const time: CardBox = { key: "time", unit: "h:min", says: "mulling ended / tested" };

export const ram = (mass = "") =>
  `Riddle the sand into the tube${mass}, set the rammer on it, and give three blows with a short rest between them.`;
