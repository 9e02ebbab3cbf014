// The recipe as a card for the muller: the weights of one load in order, and a line to fill in for each load.

import type { RecipePlan } from "../finding/recipe-plan.ts";
import type { UnitSystem } from "../log/types.ts";
import type { FoldBlock, Text } from "./blocks.ts";
import { recipeParts, weightText } from "./recipe-parts.ts";

/** More loads than this have their lines on paper of their own: the card stays one sheet. */
const mostLines = 14;

/**
 * Of a recipe that wants water; one that is too wet already has no card to mix by.
 * @example
 * const plan = recipePlan(log);
 * typeof plan === "string" ? undefined : recipeCard(plan, recipeUnits(log), "Spring heap").summary
 */
export function recipeCard(plan: RecipePlan, system: UnitSystem, title: string): FoldBlock {
  const { loads, loadKg } = plan;
  const kg = (whole: number) => weightText(whole / loads, system);
  const lines = Math.min(loads, mostLines);
  const name = loads > 1 ? `${loads} loads of ${weightText(loadKg, system)}` : weightText(loadKg, system);
  const columns = ["weighed", "water", "minutes", "compactability", "trim", "after it"];
  return {
    kind: "fold",
    ownSheet: true,
    summary: `Card: ${title}, ${name}`,
    blocks: [
      {
        kind: "prose",
        text: [
          { strong: "Mask on; muller unplugged for every hand, scoop and sample. " },
          "Puddled or over-wet sand is never poured on.",
        ],
      },
      { kind: "list", ordered: true, items: steps(plan, kg) },
      {
        kind: "table",
        name: "loads",
        caption: `One line for each load${loads > lines ? `; the first ${lines} of ${loads}` : ""}`,
        columns: [
          { head: "Load", align: "text" },
          ...columns.map((head) => ({ head, align: "text" }) as const),
        ],
        rows: Array.from({ length: lines }, (_, i) => [`${i + 1}`, ...columns.map(() => "")]),
      },
    ],
  };
}

function steps(plan: RecipePlan, kg: (whole: number) => string): Text[] {
  const { split } = plan;
  const [sand, ...rest] = recipeParts(plan).filter(({ name }) => !/ water$/.test(name));
  return [
    [{ strong: `${kg(sand!.kg)} of sand` }, `, ${sand!.note}, into the pan.`],
    [{ strong: `${kg(split.firstKg)} of water` }, " over it, spread; turn it under for a minute or two."],
    ...rest.map(
      ({ name, kg: whole, note }): Text => [
        { strong: `${kg(whole)} of ${name}` },
        `, ${note}, scattered from low down while the muller stands.`,
      ],
    ),
    "Mull ten to fifteen minutes (small wheel muller, common practice; your own mulling trial knows better).",
    [
      "Stop, unplug, test compactability. Dry: ",
      { strong: `up to ${kg(split.trimAtMostKg)} of trim water` },
      ", a third at a time, five minutes of mulling after each, test again. Wet: let it lie open, turned now and then.",
    ],
    "Riddle it out, cover it, and let it stand before it is used.",
  ];
}
