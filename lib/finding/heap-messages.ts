// What the figures of a heap say: each sentence once, with plain strings in.

import { phraseMessage } from "../message.ts";
import { listed } from "./batch-names.ts";
import { findingMessage } from "./finding-message.ts";

export const needsPours = "pours with their metal (events: a pour with its metal)";
export const needsMetal = "the metal (metal: aluminium)";
export const needsMass = "the mass of the heap (heap: { mass: 120 kg ± 5 kg })";
export const needsClay =
  "its clay at the start (recipe with its basis, or measured: live clay before the first pour)";

export const moistureTaken = "Moisture at the start was not measured: 2.5 to 4.1 % of damp mass is taken.";
export const liveFromRecipe =
  "Clay at the start is that of the recipe, taken as live, weighed to within 3 parts in 100.";
export const massCountedBack =
  "The mass at the start is that of today, with losses and additions since counted back.";
export const assumedAlways: readonly string[] = Object.freeze([
  "Live clay is counted as clay of your own bag: what of the bag never bound is not told apart.",
  "0 to 1 % of the heap is taken as lost with each pour beside what is written (our own); it moves masses, not shares.",
  "Burnt sand differs from pour to pour by about a fifth, and fines come with new sand alone, 0 to 1.5 % of it: both our own.",
  "What is swept up or thrown out is taken as typed to within a tenth, and as average sand of the heap.",
]);

export const dryingNotKnown =
  "Water that dries from pour to pour is not known, for it needs watering in the record and a moisture of today: the plan's water holds none of it.";

export const lacks = findingMessage("heap/lacks", "note", (missing: string) => ({
  text: `The heap's own burn-out and its season need ${missing}.`,
  because: ["Nothing is taken in its place: a season worked from a guess would look like a record."],
}));

/** A share of masses: the same number in any unit of mass. */
export const burntPerMetal = phraseMessage("heap/burnt-per-metal", (pounds: boolean) =>
  pounds ? "lb of burnt sand for each pound" : "kg of burnt sand for each kilogram",
);

/** tests: how many; "" counts as none. */
export const testsMade = phraseMessage("heap/tests-made", (strength: string, liveClay: string) => {
  const each = [
    strength === "0"
      ? ""
      : `${strength} ${strength === "1" ? "test" : "tests"} of strength and compactability`,
    liveClay === "0"
      ? ""
      : strength === "0"
        ? `${liveClay} ${liveClay === "1" ? "test" : "tests"} of live clay`
        : `${liveClay} of live clay`,
  ].filter((part) => part !== "");
  return each.length === 0 ? "no test at all" : listed(each);
});

export const poursMade = phraseMessage(
  "heap/pours-made",
  (count: string, metal: string) =>
    `${count} ${count === "1" ? "pour" : "pours"} with ${metal} of metal in all`,
);

export const ownBurnOut = findingMessage(
  "heap/own-burn-out",
  "note",
  (own: string, before: string, each: string, tests: string, pours: string) => ({
    text: `Your heap: ${own} ${each} of metal; before your record, ${before}.`,
    because: [
      `It rests on ${tests} over ${pours}.`,
      "Strength counts by its course alone: how well your sand is mulled and how your rig reads cancels.",
    ],
    formula: "live clay after a pour = live clay × (1 − burnt sand per metal × metal / heap)",
    source:
      "Bayes over draws; working bond s/(132.1 − c), ICRI Report 610 (2003); range before: see heat and burn-out",
  }),
);

export const notMoved = findingMessage(
  "heap/burn-out-not-moved",
  "doubt",
  (before: string, each: string, tests: string, pours: string, share: string) => ({
    text: `Your record has not moved this figure yet: ${before} ${each} of metal.`,
    because: [
      `The interval is still ${share} % as wide as before the record: it rests on ${tests} over ${pours}.`,
      "A test of strength and compactability after every other pour, and live clay by wash of dye once a season, would move it soonest.",
    ],
    source: "Bayes over draws; range before: see heat and burn-out",
  }),
);

/** after: "3 to 5", pours; "" where it is now. again: the same once the heap is mended, "" where no plan says. */
export const rebondIn = findingMessage(
  "heap/rebond-when",
  "note",
  (after: string, floor: string, planned: string, each: string, again: string) => ({
    text: `${after === "" ? "Rebond now: live clay is at or" : `After ${after} more pours live clay falls`} below ${floor} % of the dry mix, nothing put in.`,
    because: [
      `${planned} pours of ${each} are planned.${again === "" ? "" : ` Once mended, it comes to that after ${again} pours.`}`,
      "The floor is nine tenths of what you want: our own.",
    ],
    formula: "live clay, pour by pour, with what is lost; a range from every draw",
  }),
);

export const buyPerTon = findingMessage(
  "heap/buy",
  "note",
  (metal: string, clay: string, sand: string, cost: string) => ({
    text: `For ${metal} of metal: ${clay} of clay from the bag and ${sand} of new sand${cost}.`,
    because: [
      "Clay keeps live clay where you want it, sand keeps the heap's mass; both by the plan, pour by pour.",
      "An old rule of thumb is new sand of 15 % of the metal (Joyce, LaFay & Ziegler 2005, for iron, who would look at it anew).",
    ],
  }),
);

export const settles = findingMessage("heap/settles", "note", (dead: string, cycles: string) => ({
  text: `At this plan dead clay settles at ${dead} % of the dry mix, half of the way after ${cycles} pours.`,
  because: ["Dead clay leaves only with the sand that is lost or thrown out."],
  formula: "D* = (1 − λ) β A / λ, half-way ln 2 / −ln(1 − λ)",
  source: "Mass balance",
}));

export const mend = findingMessage("heap/mend", "note", (clay: string, sand: string, water: string) => ({
  text: `To bring the heap back: ${sand === "" ? "" : `${sand} of new sand, `}${clay === "" ? "no clay" : `${clay} of clay from the bag`}${water === "" ? "" : ` and ${water} of water`}.`,
  because: ["It rests on the newest figure of each: see the table of the heap as it is."],
  formula: "clay (c* dry − A)/(π − c*), water to the moisture wanted less what sand and clay bring",
  source: "Mass balance",
}));

export const atOnce = findingMessage("heap/at-once", "note", (clay: string, sand: string, water: string) => {
  const each = [
    clay === "" ? "" : `${clay} of clay`,
    sand === "" ? "" : `${sand} of new sand`,
    water === "" ? "" : `${water} of water`,
  ].filter((part) => part !== "");
  return {
    text: `Put in at most ${listed(each)} at one mulling: mull, let it stand, test, and only then the rest.`,
    because: [
      "1 % of the heap in clay and 10 % in new sand at once are our own limits; the first water is what nine times in ten is not too much.",
    ],
    source: "Our own limits",
  };
});

export const throwOut = findingMessage(
  "heap/throw-out",
  "note",
  (out: string, clay: string, sand: string) => ({
    text: `To keep the heap's mass, throw out ${out} first (dry); then ${clay} of clay and ${sand} of new sand do.`,
    because: ["Not needed for so little new sand; it is there for a bin that is full."],
    source: "Mass balance",
  }),
);

/** A fineness number now, after the sand, and wanted. */
interface FinenessMoved {
  readonly have: string;
  readonly after: string;
  readonly wanted: string;
}

/** fineness: undefined where fines are what is wanted; clay: "" where none more goes with it. */
export const sandApart = findingMessage(
  "heap/new-sand-apart",
  "note",
  (most: string, fineness: FinenessMoved | undefined, clay: string, all: string, out: string) => ({
    text: `New sand is a choice of its own: ${most}, the most at one mending,${
      fineness
        ? ` brings the grain fineness number from ${fineness.have} to ${fineness.after} (wanted: ${fineness.wanted})`
        : " brings the fines nearer to what is wanted"
    }${clay === "" ? "" : ` and takes ${clay} more clay`}.`,
    because: [
      `All the way takes ${all} of new sand; to keep the heap's mass, ${out} of the heap (dry) would be thrown out first.`,
      "A fineness number shifts by little for much sand: ask first whether its castings need it. 10 % of the dry heap at one mending is our own limit.",
    ],
    formula: "sand = grain × (g − g*)/(g* − g of the new), g* what is wanted",
    source: "Mass balance; a fineness number is a mean by mass",
  }),
);

/** unit: that of what is wanted, with a space before it; "" for a fineness number. */
export const sandNotAsked = findingMessage(
  "heap/new-sand-not-asked",
  "note",
  (what: string, have: string, wanted: string, unit: string, plusMinus: string, taken: boolean) => ({
    text: `No new sand for the ${what}: ${have} and the ${wanted}${unit} that is wanted differ by no more than its ± ${plusMinus}.`,
    because: [
      taken
        ? "The log writes no ± for it: ± 2 for a fineness number and ± 0.5 points for fines are taken, our own."
        : "A difference within its own ± may be no difference at all.",
    ],
  }),
);

export const tooWet = findingMessage("heap/too-wet", "doubt", (lose: string, dry: string) => ({
  text: `The heap is wetter than wanted: ${lose} of water must go. Spread it and let it air, or mull in ${dry} of dry sand with its share of clay.`,
  because: [
    "Over-wet sand can erupt under molten metal: it stays out of the mould until it has come back.",
    "How long it takes depends on the weather: see water for tomorrow.",
  ],
}));

export const sandNoHelp = findingMessage("heap/sand-no-help", "doubt", () => ({
  text: "New sand of this fineness cannot bring the heap to the number wanted.",
  because: ["It must lie beyond the aim, on the side away from the heap."],
}));

export const newSandUnknown = findingMessage("heap/new-sand-unknown", "note", () => ({
  text: "How much new sand fineness asks for is not known: no new sand of this log was sieved.",
  because: ["Sieve it once, and write it under sands with state: new."],
}));

export const boundsOnly = findingMessage("heap/live-clay-bounds", "doubt", (low: string, high: string) => ({
  text: `Live clay is known only as ${low} to ${high} % of the dry sand, from strength and compactability.`,
  because: [
    "The low end binds already; in the high end dead clay counts too. Clay is dosed from the middle, in small steps.",
  ],
  source: "ICRI Report 610 (2003)",
}));
