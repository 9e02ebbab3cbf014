// The sentences of the grain findings, figure first: one function each, plain strings in.

import { phraseMessage } from "../message.ts";
import type { Source } from "../quantity/source.ts";
import { listed } from "./batch-names.ts";
import { findingMessage } from "./finding-message.ts";

const hint = "No source that was read recommends this for just this metal and bond: take it as a hint.";

/** One sand, or several of which the same can be said. */
type Sands = readonly string[];
type Figured = readonly { readonly sand: string; readonly figure: string }[];

const were = ({ length }: Sands): string => (length === 1 ? "was" : "were");
/** Names in a row; by semicolons where one of them has a comma of its own. */
const named = (sands: Sands): string =>
  sands.length > 1 && sands.some((sand) => sand.includes(",")) ? sands.join("; ") : listed(sands);
/** "57.3 ± 1.5 (Bag one) and 58.8 ± 1.5 (Bag two)" */
const withNames = (figures: Figured): string =>
  listed(figures.map(({ sand, figure }) => `${figure} (${sand})`));

const numberFormula = "GFN = Σ(mass on sieve × multiplier) / Σ mass";

/** Why a sieving gives no fineness number; what the log says of it, and of the washing. */
export interface ClayOn {
  readonly kind: "natural" | "used" | "not said to be new";
  readonly washing: "not washed" | "not said";
}

export const unwashed = findingMessage(
  "grain/unwashed",
  "error",
  (sand: string, figure: string, kind: ClayOn["kind"], washing: ClayOn["washing"]) => ({
    text: `${figure} is what the sieves gave for ${sand}, but it is no fineness number: ${whyNone(kind, washing)}.`,
    because: [
      "Clay coats the grains and glues fine ones together, so they stay on coarser sieves.",
      "The number is defined on grain that is free of clay.",
      ...(kind === "not said to be new"
        ? ["If the sand is as it was bought, write `state: new` under its name, and it gets its number."]
        : []),
      ...(washing === "not said" ? ["If its clay was washed out, write `washed: yes` in the sieving."] : []),
      "Else wash the clay out, dry the grain, sieve again, and write `washed: yes`.",
    ],
    source:
      "Wash-out before sieving: Giesserei-Lexikon, Siebanalyse; coated grains distort the number: foundry encyclopaedia entry citing GB/T 9442",
  }),
);

function whyNone(kind: ClayOn["kind"], washing: ClayOn["washing"]): string {
  const washed =
    washing === "not washed" ? "it was not washed out" : "the log does not say that it was washed";
  if (kind === "natural") return `a natural sand holds clay, and ${washed}`;
  if (kind === "used") return `this is used sand, and ${washed}`;
  return washing === "not washed"
    ? "the log does not say that the sand is new, and it was not washed out"
    : "the log says neither that the sand is new nor that it was washed";
}

export const notWashedNew = findingMessage("grain/not-washed-new", "note", (sands: Sands) => ({
  text: `${named(sands)} ${were(sands)} sieved as bought: the number holds if the clay is under about 0.5 % of the dry sand.`,
  because: ["If a pinch clouds a glass of water, wash and dry a portion before sieving."],
  source: "0.5 % clay for dry sieving of new washed sand: common practice",
}));

export const cannotEstimate = findingMessage(
  "grain/cannot-estimate",
  "error",
  (sand: string, low: string, high: string, help: string) => ({
    text: `${low} to ${high} is all that can be said of the fineness of ${sand}: too little of its grain curve was measured.`,
    because: ["Those are the numbers with every grain as coarse, and as fine, as its sieve allows.", help],
    formula: numberFormula,
  }),
);

export const insideBand = findingMessage(
  "grain/inside-band",
  ["good", "note"],
  (figures: Figured, band: string, decides: boolean, source: string) => ({
    tone: decides ? "good" : "note",
    text:
      figures.length === 1
        ? `${figures[0]!.figure}: ${figures[0]!.sand} lies inside ${band}.`
        : `${withNames(figures)} lie inside ${band}.`,
    because: decides ? [] : [hint],
    formula: numberFormula,
    source,
  }),
);

export const outsideBand = findingMessage(
  "grain/outside-band",
  ["doubt", "note"],
  (figures: Figured, side: "finer" | "coarser", band: string, decides: boolean, source: string) => ({
    tone: decides ? "doubt" : "note",
    text:
      figures.length === 1
        ? `${figures[0]!.figure}: ${figures[0]!.sand} is ${side} than ${band}.`
        : `${withNames(figures)} are ${side} than ${band}.`,
    because: [
      side === "finer"
        ? "Finer sand gives a smoother skin, lets less gas through and asks for more clay and water (common practice)."
        : "Coarser sand lets more gas through, and metal can enter between its grains and roughen the skin (common practice).",
      ...(decides
        ? []
        : [
            "No source that was read recommends this for just this metal and bond: it decides nothing by itself.",
          ]),
    ],
    formula: numberFormula,
    source,
  }),
);

export const acrossBand = findingMessage(
  "grain/across-band",
  ["doubt", "note"],
  (figures: Figured, edge: string, band: string, decides: boolean, source: string) => ({
    tone: decides ? "doubt" : "note",
    text:
      figures.length === 1
        ? `${figures[0]!.figure}: whether ${figures[0]!.sand} lies inside ${band}, cannot be told, since the edge at ${edge} is within the ±.`
        : `${withNames(figures)}: whether they lie inside ${band}, cannot be told, since the edge at ${edge} is within each ±.`,
    because: decides ? [] : [hint],
    source,
  }),
);

export const noBand = findingMessage("grain/no-band", "note", (metal: string, bond: string) => ({
  text: `No usual range of fineness is known here for ${metal} in ${bond} sand.`,
  because: ["Ranges of other metals or bonds are not shown in its place."],
}));

export const doubtCarrier = findingMessage(
  "grain/doubt-carrier",
  "note",
  (
    shares: readonly { readonly sand: string; readonly percent: string }[],
    carrier: string,
    what: string,
  ) => ({
    text: `${listed(shares.map(({ sand, percent }, k) => `${percent} % of ${k === 0 ? "the doubt" : "that"} about ${sand}`))} ${shares.length === 1 ? "comes" : "come"} from ${carrier}.`,
    because: [what],
    formula: "share = variance with this source alone / variance with all",
    source: "Propagation of distributions, JCGM 101:2008",
  }),
);

export const sieveWouldNarrow = findingMessage(
  "grain/sieve-would-narrow",
  "note",
  (sand: string, sieve: string, now: string, after: string) => ({
    text: `${sieve} is the missing sieve that would help ${sand} most: its ± would fall from ${now} to about ${after}.`,
    because: ["Each missing sieve was put in with the mass that the present curve expects on it."],
    formula: "curve between sieves: straight on log-probability paper, with scatter learnt from random sands",
    source: "Scatter between sieves: fitted to random sands of known grading, our own",
  }),
);

export const unrepeated = findingMessage("grain/unrepeated", "doubt", (sands: Sands) => ({
  text: `${named(sands)} ${were(sands)} sieved once${sands.length === 1 ? "" : " each"}: how sievings scatter is not known, so ${sands.length === 1 ? "its ± is a lower bound" : "each ± is a lower bound"} ("at least").`,
  because: [
    "A second portion of the same sample, riffled or coned and quartered, would supply it; a fresh grab from the bag tells more.",
  ],
}));

export const grabsUnknown = findingMessage("grain/grabs-unknown", "note", (sand: string, sd: string) => ({
  text: `${sd} is the standard deviation between sievings for ${sand}, but all of them may come from one handful: its ± is "at least".`,
  because: ["Take the next portion anew from another place in the bag and write `repeat of: grab`."],
}));

export const repeatsAgree = findingMessage(
  "grain/repeats",
  "good",
  (sand: string, sd: string, count: string) => ({
    text: `${sd} is the standard deviation between the ${count} grabs of ${sand}; it is part of the ±.`,
    because: [],
    formula: "s = √(Σ(x − mean)² / (n − 1)); Student's t",
    source: "GUM (JCGM 100:2008) 4.2",
  }),
);

export const weighingUnknown = findingMessage("grain/weighing-unknown", "doubt", (sands: Sands) => ({
  text: `On which scale ${named(sands)} ${were(sands)} weighed is not in the log, so the doubt of the weighings is not in the ±.`,
  because: ["Declare the scale with what it reads to, or write a ± after the masses."],
}));

export const screensAre = findingMessage(
  "grain/screens",
  "note",
  (
    shares: readonly { readonly sand: string; readonly percent: string }[],
    count: string,
    sieves: string,
  ) => ({
    text:
      count === "One"
        ? `${sieves} alone holds a tenth or more of ${listed(shares.map(({ sand, percent }) => `${sand} (${percent} %)`))}.`
        : shares.length === 1
          ? `${count} neighbouring sieves of ${shares[0]!.sand} hold a tenth or more each: ${sieves}, with ${shares[0]!.percent} % of the sand.`
          : `${count} neighbouring sieves hold a tenth or more each of ${listed(shares.map(({ sand, percent }) => `${sand} (${percent} % together)`))}: ${sieves}.`,
    because: [
      "A sand spread over three or four sieves packs closer than one on two and swells less abruptly (common practice).",
    ],
    source: "Counting sieves with 10 % or more: trade usage, from memory",
  }),
);

export const gapIn = findingMessage(
  "grain/gap",
  "doubt",
  (sand: string, empty: string, coarse: string, fine: string) => ({
    text: `${empty} nearly empty between ${coarse} and ${fine}: ${sand} has a gap in its grading.`,
    because: ["A gap is to be avoided in a moulding sand (common practice)."],
    source: "What counts as a gap: our own",
  }),
);

export const finesHigh = findingMessage("grain/fines", "note", (sand: string, figure: string) => ({
  text: `${figure} % of ${sand} is finer than 0.106 mm; 2 % is often asked of new washed sand of this fineness.`,
  because: ["Fines take up water and clay and close the pores (common practice)."],
  source:
    "Fines as No. 200 + No. 270 + pan: ABIFA 2019 on CEMP-081; the 2 %: common practice, no source read",
}));

export const massMissing = findingMessage(
  "grain/mass-lost",
  "doubt",
  (sand: string, portion: string, percent: string, allowed: boolean) => ({
    text: `${percent} % of the start mass of ${sand}${portion} is not on the sieves${allowed ? "" : ": more than a sieving may lose"}.`,
    because: [
      "The figure divides by what was retained, as if the loss were spread like the sand.",
      "A loss may have been dust: the ± reaches up to where all of it belonged in the pan.",
    ],
    source: "0.3 %: ASTM C136; 1 %: EN 933-1 (from memory)",
  }),
);

export const massAdded = findingMessage(
  "grain/mass-gained",
  "doubt",
  (sand: string, portion: string, percent: string) => ({
    text: `${percent} % more than the start mass of ${sand}${portion} is on the sieves.`,
    because: ["Look at the tare, at sand that was not dry, and at grains of an earlier sand in the mesh."],
    source: "0.3 %: ASTM C136; 1 %: EN 933-1 (from memory)",
  }),
);

export const crowded = findingMessage(
  "grain/crowded",
  "doubt",
  (crowds: readonly { readonly sand: string; readonly message: string }[]) => ({
    text:
      crowds.length === 1
        ? `${crowds[0]!.sand}, ${crowds[0]!.message}`
        : `A sieve was crowded under ${named(crowds.map(({ sand }) => sand))}: fine grains may be held back.`,
    because: [
      ...(crowds.length === 1 ? [] : crowds.map(({ sand, message }) => `${sand}, ${message}`)),
      "Grains that cannot reach the mesh stay with the coarser ones, and the number comes out too low.",
    ],
    source: "Five layers: McManus 1965, J. Sed. Petrol. 35(4) 792; load by area: ASTM C136",
  }),
);

export const scaleUnchecked = findingMessage("grain/scale-unchecked", "note", (sands: Sands) => ({
  text: `${named(sands)} ${were(sands)} weighed on a scale that was never checked with known weights, so its bias is not in the ±.`,
  because: [
    "Weigh a known weight or two of about the size of your fractions, and write how far it is off at most beside what it reads to: `within: 0.2 g`.",
  ],
}));

export const scaleBiasShared = phraseMessage(
  "grain/scale-bias-shared",
  () => "All weighings on one scale share this doubt; a check with known weights would narrow it.",
);

/** kind: of the source that carries most of a doubt. */
export const doubtNarrowedBy = phraseMessage("grain/narrowed-by", (kind: Source["kind"]) => remedies[kind]);

const remedies: { readonly [kind in Source["kind"]]: string } = {
  reading: "A scale with a finer step, or a larger portion sieved in parts, would narrow it.",
  rig: "All sievings on one set share this doubt, so it cancels when two sands are compared on that set.",
  method: "A lid, a brush and a second weighing of each sieve keep the loss small.",
  model: "A sieve between the two would narrow it.",
  repeat: "More repeats would narrow it.",
};
