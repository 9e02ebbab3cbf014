// The sentences on mulling, figure first: one function each, plain strings in.

import { findingMessage } from "./finding-message.ts";

const form = "S = S∞ − (S∞ − S0)·e^(−t/τ); time to a share q of S∞: t = τ·ln((S∞ − S0)/((1 − q)·S∞))";
const formSource =
  "Form: common practice (that of NIST StRD Misra1a and BoxBOD), no published mulling curve with numbers was found; intervals: profile, Bates & Watts ch. 6 (from memory)";

export const timeKnown = findingMessage(
  "mulling/time",
  "good",
  (way: string, share: string, minutes: string, enough: string) => ({
    text: `${minutes} until ${share} % of full bond, "${way}"; ${enough} are enough with a chance of 97.5 in 100.`,
    because: [
      "Minutes count from the last water, as the readings do.",
      "Full bond is that of this mix at this water and this load: more clay or a fuller pan asks for another trial.",
    ],
    formula: form,
    source: formSource,
  }),
);

export const timeOpen = findingMessage(
  "mulling/time-open",
  "doubt",
  (way: string, share: string, least: string, longest: string) => ({
    text: `${least} or more until ${share} % of full bond, "${way}": the readings end before they say how much more.`,
    because: [
      `The longest was ${longest}, and strength may still have been rising there; a time beyond what was tried is not made up.`,
      "Two further readings, at twice and at three times the longest, would close it.",
    ],
    formula: form,
    source: formSource,
  }),
);

export const notBent = findingMessage("mulling/not-bent", "error", (way: string, longest: string) => ({
  text: `No time can be given, "${way}": strength rose as fast at ${longest} as at the start.`,
  because: [
    "Mull on, and read at twice and at three times the longest: only a curve that bends has a full bond.",
  ],
  formula: form,
}));

export const tooFew = findingMessage("mulling/too-few", "error", (way: string, count: string) => ({
  text: `${count} different times were read, "${way}": three are needed for a curve, and five or six for a time worth having.`,
  because: [
    "Read early, when strength rises fast, and late, when it has stopped: 1, 2, 4, 8, 15 and 20 minutes do.",
  ],
}));

export const fellAtEnd = findingMessage(
  "mulling/fell",
  "doubt",
  (way: string, last: string, best: string) => ({
    text: `${last} at the end, "${way}", lies below the ${best} that it had before, by more than readings scatter.`,
    because: [
      "Sand dries and warms while it is mulled; then strength moves with the water, and the curve's full bond is not to be relied on.",
      "Read moisture with the first and the last sample, and mull with the lid on.",
    ],
  }),
);

export const moistureMoved = findingMessage(
  "mulling/moisture-moved",
  "doubt",
  (way: string, drift: string) => ({
    text: `${drift} of damp mass is what moisture changed by from the first reading to the last, "${way}": strength moved with it.`,
    because: [
      "Cover the pan, or temper again and leave five minutes after the water before the next reading.",
    ],
    source: "Five minutes after water: TJFS-108",
  }),
);

export const toldApart = findingMessage(
  "mulling/slower",
  "good",
  (slower: string, quicker: string, times: string) => ({
    text: `${times} times as long "${slower}" as "${quicker}", each to 95 % of its own full bond.`,
    because: [
      "Each is held against the full bond that it ends at by itself; what those strengths are stands in the table.",
    ],
    formula: "ratio of the two times, by draws from both profiles",
    source: "Propagation of distributions, JCGM 101:2008",
  }),
);

export const notToldApart = findingMessage(
  "mulling/not-told-apart",
  "note",
  (slower: string, quicker: string, times: string) => ({
    text: `${times} times as long "${slower}" as "${quicker}": which of them is the slower cannot be told from these readings.`,
    because: ["More readings about the bend of both curves, of the same mix on one day, would tell."],
    formula: "ratio of the two times, by draws from both profiles",
    source: "Propagation of distributions, JCGM 101:2008",
  }),
);

export const fullBonds = findingMessage(
  "mulling/full-bonds",
  "note",
  (first: string, one: string, second: string, other: string, apart: boolean) => ({
    text: apart
      ? `${one} is the full bond "${first}", ${other} "${second}": time alone does not bring the one to the other.`
      : `${one} is the full bond "${first}", ${other} "${second}": they cannot be told apart.`,
    because: ["The bias of a strength rig that both were tested on is in both alike and not in these ±."],
  }),
);

export const beside = findingMessage("mulling/common-practice", "note", (enough: string) => ({
  text: `${enough} Small wheel mullers are commonly run five minutes dry and ten to fifteen after the water.`,
  because: [
    "That is what others do with their machines; the curve is what yours did with your sand.",
    "Production mullers of the slow kind take 3 to 6 min, laboratory ones 5 to 10 (from memory).",
    "Bond that is full says nothing of the mould's water or vents.",
  ],
  source: "Five minutes, ten to fifteen: common practice, no source read",
}));

export const mullsShort = findingMessage(
  "mulling/as-run",
  "note",
  (minutes: string, chance: string, way: string) => ({
    text: `${minutes} as the muller is run reach 95 % of full bond with a chance of ${chance} in 100, by the curve "${way}".`,
    because: ["The chance is that of the readings' doubt, for a load like the one that was tried."],
  }),
);

const spreadHotSand =
  "Water that is added now leaves as steam. Spread the sand, let it cool, test again before tempering.";
const mullingLimits = "Aklinski & Granlund, citing Schumacher; the same limits in Strobl & Silsby";

export const tooHotToMull = findingMessage("mulling/too-hot", "doubt", (celsius: string) => ({
  text: `${celsius} is too hot to mull: above 71 °C (160 °F) sand mulls to no consistency.`,
  because: [spreadHotSand],
  source: mullingLimits,
}));

export const hotToMull = findingMessage("mulling/hot", "doubt", (celsius: string) => ({
  text: `${celsius} is hot for mulling: from 49 °C (120 °F) on sand mulls unevenly.`,
  because: [spreadHotSand],
  source: mullingLimits,
}));

export const panTurns = findingMessage("mulling/turns", "note", (rpm: string) => ({
  text: `${rpm} turns a minute is what motor and reduction give.`,
  because: [
    "A motor's plate gives its speed under full load, belts slip by a few percent, and neither is in it: count the turns over a minute from outside the guard.",
    "1450 rpm through 60 : 1, about 24 turns a minute, is a usual drive of small wheel mullers (common practice).",
  ],
  formula: "motor speed / reduction",
}));
