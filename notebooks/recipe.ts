// What to weigh for a heap or for the loads of a muller, how much water, what it comes to and what it costs.

import {
  type Block,
  type Finding,
  findingBlocks,
  type Log,
  massWords,
  notebook,
  type RecipeLack,
  type RecipePlan,
  recipeCard,
  recipeCautions,
  recipeComesTo,
  recipeFindings,
  recipePlan,
  recipeShopping,
  recipeUnits,
  recipeWeights,
  type Section,
  type Text,
  type UnitSystem,
} from "../lib/index.ts";

export default notebook(
  "Recipe",
  (log) => {
    const plan = recipePlan(log);
    const worked = typeof plan === "string" ? undefined : plan;
    const system = recipeUnits(log);
    const findings = worked ? recipeFindings(worked, massWords(system), log.heap) : [];
    const cautions = recipeCautions({
      muller: log.recipe?.mullerPanKg !== undefined,
      additives: (log.recipe?.additives.length ?? 0) > 0,
      dried: worked !== undefined && worked.waterKg.value <= 0,
    });
    return {
      title: log.title ? `Recipe: ${log.title}` : "Recipe",
      question: "What is to be weighed, how much water goes in at once, and what does it cost?",
      answer: worked ? answer(worked, findings, system) : [lacks[plan as RecipeLack]],
      sections: [
        {
          role: "cautions",
          title: "Before you mix",
          blocks: cautions.map((caution): Block => ({ kind: "caution", caution })),
        },
        ...(worked ? sectionsOf(worked, log, system) : []),
        { role: "findings", title: "What the figures say", blocks: findingBlocks(findings) },
        {
          role: "next",
          title: "What to do next",
          blocks: [{ kind: "list", items: worked ? nextSteps(worked, findings) : [firstStep] }],
        },
      ],
      sources: [...new Set(findings.flatMap(({ source }) => source ?? []))],
      figures: worked ? figuresOf(worked) : {},
    };
  },
  { question: "What goes into a heap or a muller load, how much water first, and what does it cost?" },
);

const firstStep = [
  "Write into the log: ",
  { code: "recipe: { basis: per 100 of sand, clay: 8.7, moisture: 3.4 %, make: 120 kg, muller pan: 12 kg }" },
  ".",
];

const lacks: { readonly [lack in RecipeLack]: string } = {
  recipe: "The log has no recipe: write one, and the weights follow.",
  basis: "The recipe does not say what its shares are of, so nothing can be weighed out.",
  clay: "The recipe has no share of clay that can be read, so nothing can be weighed out.",
  moisture: "The recipe does not say what moisture is wanted, so its water cannot be worked out.",
  "sand left over":
    "Clay, additives and water together leave no sand: look at the basis and the decimal points.",
};

function answer(plan: RecipePlan, findings: readonly Finding[], system: UnitSystem): Text[] {
  const { masses, loads, loadKg } = plan;
  const words = massWords(system);
  const of = loads > 1 ? `, in ${loads} loads of ${words.mass(loadKg)}` : "";
  const weights = [
    `${words.mass(masses.sandKg)} of sand`,
    `${words.mass(masses.clayKg)} of clay`,
    ...plan.additives.map((name, i) => `${words.mass(masses.additivesKg[i]!)} of ${name}`),
  ];
  const water = findings.find(({ code }) => code === "recipe/water" || code === "recipe/too-wet-already");
  if (plan.waterKg.value <= 0 && water)
    return [
      [{ strong: water.text }],
      `As they lie, ${listed(weights)} are meant for the heap${of}; the sand is dried first, and the weights worked out anew.`,
    ];
  return [[{ strong: listed(weights) }, ` make the heap${of}.`], ...(water ? [water.text] : [])];
}

/** Two parts or more: "a and b", "a, b and c". */
const listed = (parts: readonly string[]) => `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

function sectionsOf(plan: RecipePlan, log: Log, system: UnitSystem): Section[] {
  return [
    // Too wet already: nothing to mix by, so no card.
    ...(plan.waterKg.value > 0
      ? [
          {
            role: "data",
            title: "The card for the muller",
            blocks: [recipeCard(plan, system, log.title ?? "recipe")],
          } as const,
        ]
      : []),
    { role: "data", title: "What to weigh", blocks: recipeWeights(plan, system) },
    {
      role: "result",
      title: "What it comes to, and what it costs",
      blocks: [recipeComesTo(plan), ...waterDoubt(plan), ...recipeShopping(plan, log, system)],
    },
  ];
}

/** What the ± of the water comes from; nothing where one source brings it all. */
function waterDoubt({ waterKg }: RecipePlan): Block[] {
  const shares = waterKg.shares.filter(({ percent }) => percent >= 1);
  if (shares.length < 2) return [];
  const parts = shares
    .sort((a, b) => b.percent - a.percent)
    .map(({ id, source, percent }) => `${percent.toFixed(0)} % ${source.says ?? id}`);
  const text = `What the ± of the water comes from, in shares of its variance: ${parts.join(", ")}. Drying a weighed portion of the first is worth most.`;
  return [{ kind: "prose", text }];
}

function nextSteps({ taken, loads, recipe }: RecipePlan, findings: readonly Finding[]): Text[] {
  const tooWet = findings.some(({ code }) => code === "recipe/too-wet-already");
  return [
    ...(taken.length > 0
      ? [
          "Weigh, dry and weigh again 100 g of the sand and 50 g of the bagged clay, and write what they hold.",
        ]
      : []),
    ...(tooWet ? ["Dry the sand first; do not make up for it with more clay."] : []),
    loads > 1
      ? "Make one load, test its compactability, correct the trim of the others by it, and only then make them."
      : "Mull it, test its compactability, and write what trim it took.",
    "In a small wheel muller: ten to fifteen minutes after the water (common practice). Some mix five minutes dry first, also common practice; it raises more dust.",
    ...(recipe.buckets.length > 0
      ? ["Weigh a bucket again on the day: the sand may be damper than it was."]
      : []),
    "Write a trial batch of it into the log with its tests, and let the moisture trial find the water.",
  ];
}

function figuresOf({ masses, waterKg, split, loads, loadKg, comesTo }: RecipePlan): Record<string, unknown> {
  const plain = ({ value, low, high }: { value: number; low: number; high: number }) => ({
    value,
    low,
    high,
  });
  return {
    sandKg: masses.sandKg,
    clayKg: masses.clayKg,
    additivesKg: masses.additivesKg.reduce((sum, kg) => sum + kg, 0),
    waterKg: plain(waterKg),
    firstWaterKg: split.firstKg,
    dampKg: masses.dampKg,
    loads,
    loadKg,
    clayOfDryMixPercent: plain(comesTo.clayOfDryMixPercent),
    moistureOfDampPercent: plain(comesTo.moistureOfDampPercent),
  };
}
