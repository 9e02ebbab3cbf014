// Sievings as a founder types them: grabs from a bag with a known grading, by his own sieves and scale.

import { type Passing, sievedShares } from "../sand/plausible-sands.ts";
import type { Seeded } from "../seeded.ts";
import type { FoundersScale, FoundersSieves } from "./instruments.ts";

/** Stacks of few sieves, openings in mm. */
export const homeStacks = [
  [0.85, 0.425, 0.25, 0.15, 0.106, 0.075],
  [0.85, 0.425, 0.25, 0.15, 0.075],
  [0.6, 0.425, 0.3, 0.212, 0.15, 0.106, 0.075],
  [0.425, 0.212, 0.106, 0.053],
  [0.6, 0.3, 0.15, 0.075],
];

export interface Sieved {
  readonly name: string;
  readonly passing: Passing;
  readonly grabs: number;
  /** A grab is finer or coarser than the bag by so many powers of two, sd. */
  readonly wander: number;
  readonly startG: number;
}

/** A sand of a log. Some of the sand is lost on the way, part of it as dust. */
export function sandText(
  random: Seeded,
  { name, passing, grabs, wander, startG }: Sieved,
  sieves: FoundersSieves,
  scale: FoundersScale,
): string {
  const rows = Array.from({ length: grabs }, (_, k) => {
    const stretch = 2 ** (wander * random.normal());
    const shares = sievedShares((mm) => passing(mm * stretch), sieves.realMm);
    const lost = random.uniform(0, 0.004) * startG;
    const asDust = Math.min(random.uniform(0, 1) * lost, (startG * shares.at(-1)!) / 100);
    const held = shares.map((share, i) => {
      const all = (startG * share) / 100 - (i === shares.length - 1 ? asDust : 0);
      return scale.weigh(Math.max(0, all - ((lost - asDust) * share) / 100)).replace(/^-.*/, "0");
    });
    const labels = [...sieves.labels, "pan"];
    const retained = labels.map((label, i) => `${label}: ${held[i]}`).join(", ");
    const repeat = grabs > 1 ? `portion: ${String.fromCharCode(65 + k)}, repeat of: grab, ` : "";
    return `      - { date: 2026-03-0${k + 1}, ${repeat}scale: ${scale.name}, sieve set: ${sieves.name}, minutes: 15, washed: yes, start: ${scale.weigh(startG)} g, retained: { ${retained} } }`;
  });
  return `  ${name}:\n    state: new\n    sievings:\n${rows.join("\n")}\n`;
}
