// The sentences of the grain findings, figure first: one function each, plain strings in.

import type { Finding } from "./finding.ts";

const numberFormula = "GFN = Σ(mass on sieve × multiplier) / Σ mass";

export const unwashedUsed = (sand: string, figure: string): Finding => ({
  code: "grain/unwashed-used",
  tone: "error",
  text: `${figure} is what the sieves gave for ${sand}, but it is no fineness number: this is used sand, and its clay was not washed out.`,
  because: [
    "Clay coats the grains and glues fine ones together, so they stay on coarser sieves.",
    "The number is defined on grain that is free of clay.",
    "Wash the clay out, dry the grain, sieve again, and write washed: yes.",
  ],
  source:
    "Wash-out before sieving: Giesserei-Lexikon, Siebanalyse; coated grains distort the number: foundry encyclopaedia entry citing GB/T 9442",
});

export const notWashedNew = (sand: string): Finding => ({
  code: "grain/not-washed-new",
  tone: "note",
  text: `${sand} was sieved as bought: the number holds if its clay is under about 0.5 % of the dry sand.`,
  because: ["If a pinch clouds a glass of water, wash and dry a portion before sieving."],
  source: "0.5 % clay for dry sieving of new washed sand: common practice",
});

export const cannotEstimate = (sand: string, low: string, high: string): Finding => ({
  code: "grain/cannot-estimate",
  tone: "error",
  text: `${low} to ${high} is all that can be said of the fineness of ${sand}: too little of its grain curve was measured.`,
  because: [
    "Those are the numbers with every grain as coarse, and as fine, as its sieve allows.",
    "At least three sieves with sand on them are needed, and no more than half of the sand on the top sieve or in the pan.",
  ],
  formula: numberFormula,
});

export const insideBand = (
  sand: string,
  figure: string,
  band: string,
  decides: boolean,
  source: string,
): Finding => ({
  code: "grain/inside-band",
  tone: decides ? "good" : "note",
  text: `${figure}: ${sand} lies inside ${band}.`,
  because: decides ? [] : ["This range is no source's recommendation that could be read: take it as a hint."],
  formula: numberFormula,
  source,
});

export const outsideBand = (
  sand: string,
  figure: string,
  side: "finer" | "coarser",
  band: string,
  decides: boolean,
  source: string,
): Finding => ({
  code: "grain/outside-band",
  tone: decides ? "doubt" : "note",
  text: `${figure}: ${sand} is ${side} than ${band}.`,
  because: [
    side === "finer"
      ? "Finer sand gives a smoother skin, lets less gas through and asks for more clay and water (common practice)."
      : "Coarser sand lets more gas through, and metal can enter between its grains and roughen the skin (common practice).",
    ...(decides
      ? []
      : ["This range is no source's recommendation that could be read: it decides nothing by itself."]),
  ],
  formula: numberFormula,
  source,
});

export const acrossBand = (
  sand: string,
  figure: string,
  edge: string,
  band: string,
  source: string,
): Finding => ({
  code: "grain/across-band",
  tone: "doubt",
  text: `${figure}: whether ${sand} lies inside ${band} cannot be told, since the edge at ${edge} is within the ±.`,
  because: ["What narrows the ± is said below."],
  formula: numberFormula,
  source,
});

export const noBand = (metal: string, bond: string): Finding => ({
  code: "grain/no-band",
  tone: "note",
  text: `No usual range of fineness is known here for ${metal} in ${bond} sand.`,
  because: ["Ranges of other metals or bonds are not shown in its place."],
});

export const doubtCarrier = (sand: string, percent: string, carrier: string, what: string): Finding => ({
  code: "grain/doubt-carrier",
  tone: "note",
  text: `${percent} % of the doubt about ${sand} comes from ${carrier}.`,
  because: [what],
  formula: "share = variance with this source alone / variance with all",
  source: "Propagation of distributions, JCGM 101:2008",
});

export const sieveWouldNarrow = (sand: string, sieve: string, now: string, then: string): Finding => ({
  code: "grain/sieve-would-narrow",
  tone: "note",
  text: `${sieve} is the missing sieve that would help ${sand} most: what is likely would shrink from ${now} to about ${then} wide.`,
  because: ["Each missing sieve was put in with the mass that the present curve expects on it."],
  formula: "curve between sieves: straight on log-probability paper, with scatter learnt from random sands",
  source: "Scatter between sieves: fitted to random sands of known grading, our own",
});

export const unrepeated = (sand: string): Finding => ({
  code: "grain/unrepeated",
  tone: "doubt",
  text: `One sieving of ${sand}: its ± is "at least", since the scatter between sievings is not in it.`,
  because: [
    "A second portion, riffled from the same sample, would supply it; a fresh grab from the bag tells more.",
  ],
});

export const grabsUnknown = (sand: string, sd: string): Finding => ({
  code: "grain/grabs-unknown",
  tone: "note",
  text: `${sd} is the standard deviation between sievings for ${sand}, but all of them may come from one handful: its ± is "at least".`,
  because: ["Take the next portion anew from another place in the bag and write repeat of: grab."],
});

export const repeatsAgree = (sand: string, sd: string, count: string): Finding => ({
  code: "grain/repeats",
  tone: "good",
  text: `${sd} is the standard deviation between the ${count} grabs of ${sand}; it is part of the ±.`,
  because: [],
  formula: "s = √(Σ(x − mean)² / (n − 1)); Student's t",
  source: "GUM (JCGM 100:2008) 4.2",
});

export const weighingUnknown = (sand: string): Finding => ({
  code: "grain/weighing-unknown",
  tone: "doubt",
  text: `The scale of ${sand} is not in the log, so the doubt of the weighings is not in the ±.`,
  because: ["Declare the scale with what it reads to, or write a ± after the masses."],
});

export const screensAre = (sand: string, count: string, share: string, sieves: string): Finding => ({
  code: "grain/screens",
  tone: "note",
  text: `${count} neighbouring sieves of ${sand} hold a tenth or more each: ${sieves}, with ${share} % of the sand.`,
  because: [
    "A sand spread over three or four sieves packs closer than one on two and swells less abruptly (common practice).",
  ],
  source: "Counting sieves with 10 % or more: trade usage, from memory",
});

export const gapIn = (sand: string, empty: string, coarse: string, fine: string): Finding => ({
  code: "grain/gap",
  tone: "doubt",
  text: `${empty} nearly empty between ${coarse} and ${fine}: ${sand} has a gap in its grading.`,
  because: ["A gap is to be avoided in a moulding sand (common practice)."],
  source: "What counts as a gap: our own",
});

export const finesAre = (sand: string, figure: string, high: boolean): Finding => ({
  code: "grain/fines",
  tone: "note",
  text: high
    ? `${figure} % of ${sand} is finer than 0.106 mm, more than the 2 % often asked of new washed sand; a fine sand has more by its nature.`
    : `${figure} % of ${sand} is finer than 0.106 mm, within the 2 % often asked of new washed sand.`,
  because: ["Fines take up water and clay and close the pores (common practice)."],
  source:
    "Fines as No. 200 + No. 270 + pan: ABIFA 2019 on CEMP-081; the 2 %: common practice, no source read",
});

export const massMissing = (sand: string, percent: string, allowed: boolean): Finding => ({
  code: "grain/mass-balance",
  tone: "doubt",
  text: `${percent} % of the start mass of ${sand} is not on the sieves${allowed ? "" : ": more than a sieving may lose"}.`,
  because: [
    "The figure divides by what was retained, as if the loss were spread like the sand.",
    "A loss may have been dust: the ± reaches up to where all of it belonged in the pan.",
  ],
  source: "0.3 %: ASTM C136; 1 %: EN 933-1 (from memory)",
});
