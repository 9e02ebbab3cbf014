// Faults of castings and what each is usually put down to, in the sand and before the sand.

import type { CauseProperty, CauseTag, FaultRow, SandCause } from "./casting-fault.ts";

const ring = "M. Ring, trade article on compactability";
const granlund = "encyclopaedia entry on permeability, citing Modern Casting, March 1999";
const honeyman = "S. Honeyman, Modern Casting, December 2014";
const porosity = "thesis of Universitas Sebelas Maret: porosity of Al-Si 1.56 % at 4 % water, 3.06 % at 8 %";
const lexicon = "a German foundry lexicon, on the tendency towards defects and on rat tails";
const atlas = "list of an atlas of casting defects";
const books = "books on casting defects";
const practice = "common practice";

const cause = (
  property: CauseProperty,
  side: "high" | "low",
  source: string,
  tag: CauseTag = "read",
  more: Partial<SandCause> = {},
): SandCause => ({ says: `${property} ${side}`, test: { property, side }, source, tag, ...more });
const untested = (says: string, source: string, tag: CauseTag = "read"): SandCause => ({ says, source, tag });

const gas = [
  cause("permeability", "low", granlund),
  cause("compactability", "high", ring),
  untested("much that burns to gas (loss on ignition)", honeyman),
];

export const castingFaults = Object.freeze([
  "gas holes",
  "pinholes",
  "penetration",
  "rough skin",
  "scabs",
  "rat tails",
  "washes",
  "drops",
  "swells",
  "hot tears",
  "misruns",
  "shrinkage",
] as const);
export type CastingFault = (typeof castingFaults)[number];

/** Links with their sources; where two sources disagree both stand. First causes are common practice. */
export const castingFaultRows: { readonly [fault in CastingFault]: FaultRow } = Object.freeze({
  "gas holes": {
    alias: ["blows", "blowholes", "blow holes", "gas hole", "blow"],
    looks: "round, smooth holes, mostly under the skin or in the cope",
    first: [
      "metal: wet or dirty charge, overheated, not degassed",
      "pouring: turbulent or broken stream, cold ladle",
      "gating: no vents at high spots, air drawn in at the sprue; damp cores or chills",
    ],
    sand: [
      cause("moisture", "high", practice, "common practice"),
      ...gas,
      untested("rammed too hard, not vented", books, "from memory"),
    ],
  },
  pinholes: {
    alias: ["pinhole", "pin holes", "gas porosity", "porosity"],
    looks: "many small holes, spread through the section or just under the skin",
    first: [
      "metal: hydrogen from damp charge, scrap, tools or flux; overheated or held long; not degassed",
      "pouring: hotter than it need be",
      "section: thick and slow to freeze",
    ],
    sand: [cause("moisture", "high", porosity, "read", { metal: "aluminium" }), ...gas],
  },
  penetration: {
    alias: ["metal penetration", "burn-on", "burn on", "burn-in", "burned-on sand", "fused sand"],
    looks: "sand held in metal, in corners and under a high head",
    first: ["pouring: too hot, too high a head", "pattern: sharp inner corners that stay hot"],
    sand: [
      cause("permeability", "high", granlund),
      cause("compactability", "low", ring),
      cause("fineness", "low", books, "from memory"),
      untested("rammed too softly", books, "from memory"),
    ],
  },
  "rough skin": {
    alias: ["rough surface", "roughness", "rough", "poor finish", "rough finish"],
    looks: "a skin that shows the grain",
    first: ["pattern: rough or sticky, without parting or facing sand", "pouring: too hot"],
    sand: [
      cause("permeability", "high", granlund),
      cause("compactability", "high", ring),
      cause("fineness", "low", books, "from memory"),
    ],
  },
  scabs: {
    alias: ["scab", "expansion scab", "buckles", "buckle"],
    looks: "a rough plate of metal with sand behind it, on a flat face",
    first: [
      "pouring: slow, so that a face is heated long before metal covers it",
      "gating: metal let in over one wide flat face",
    ],
    sand: [
      cause("compactability", "high", honeyman),
      cause("permeability", "low", honeyman),
      untested("much that burns to gas (loss on ignition)", honeyman),
      untested("wet tensile strength low beside the thrust of the heated layer", lexicon),
    ],
  },
  "rat tails": {
    alias: ["rat tail", "rattail", "rattails", "rat-tails", "veins"],
    looks: "a shallow, winding line or step, mostly on the drag",
    first: ["pouring: slow over a flat drag", "gating: one gate that feeds a wide flat face"],
    sand: [
      untested("wet tensile strength low beside the thrust of the heated layer", lexicon),
      untested("rammed too hard, little that gives way when hot", books, "from memory"),
    ],
  },
  washes: {
    alias: ["wash", "cuts", "cut", "erosion", "sand inclusions", "sand inclusion", "inclusions"],
    looks: "metal too thick near a gate, and its sand elsewhere in the casting",
    first: [
      "gating: narrow or steep, a jet on one spot, no basin",
      "pouring: from high up, or for long through one gate",
      "pattern: no rounded edges; loose sand left in the mould",
    ],
    sand: [
      cause("moisture", "low", books, "from memory"),
      cause("green compression", "low", books, "from memory"),
      untested("low dry strength, as of calcium bentonite", "a supplier's note on clays"),
      untested("rammed too softly, or left to dry out", books, "from memory"),
    ],
  },
  drops: {
    alias: ["drop", "crush", "crushes", "drop-out", "drop out", "cope drop"],
    looks: "a lump of metal where sand fell, and the sand elsewhere",
    first: [
      "pattern: too little draft, deep pockets, no bars or gaggers in the cope",
      "moulding: flasks that shift or were knocked when they were closed",
    ],
    sand: [
      cause("compactability", "low", `${ring}: friable edges, crushes, pockets that are hard to draw`),
      cause("green compression", "low", books, "from memory"),
      cause("live clay", "low", books, "from memory"),
    ],
  },
  swells: {
    alias: ["swell", "oversize", "mould wall movement", "bulge", "bulges"],
    looks: "a casting thicker or heavier than its pattern",
    first: ["moulding: rammed unevenly, flask or weights too light", "pouring: high head"],
    sand: [cause("compactability", "high", ring), untested("rammed too softly", ring)],
  },
  "hot tears": {
    alias: ["hot tear", "hot cracks", "hot crack", "cracks", "crack"],
    looks: "a ragged, dull crack where sections meet",
    first: [
      "metal: an alloy that is short when hot",
      "pattern: thin beside thick, sharp inner corners, shape that cannot shrink",
      "gating: feeders and runners that hold the casting",
    ],
    sand: [
      untested("hot or dry strength high, little that gives way when hot", atlas),
      untested("rammed too hard", atlas),
    ],
  },
  misruns: {
    alias: ["misrun", "cold shuts", "cold shut", "cold laps", "cold lap", "short pour"],
    looks: "a part that did not fill, or a seam with round edges",
    first: [
      "pouring: too cold, too slow, interrupted",
      "gating: too narrow, too far from the thin part; no vents there",
      "pattern: section too thin for the metal",
    ],
    sand: [
      cause("permeability", "low", practice, "common practice"),
      untested("too much sea coal (iron)", "extract of a foundry handbook on sands"),
      untested(
        "not clay or water: no difference was found at clay 5 to 10 % and water 5 to 7 % (aluminium)",
        "thesis of Virginia Polytechnic on fluidity in green sand",
      ),
    ],
  },
  shrinkage: {
    alias: ["shrink", "shrinks", "shrinkage porosity", "sink", "sinks", "shrink holes", "shrinkage holes"],
    looks: "a ragged hole or a sunken face where metal froze last",
    first: [
      "gating: no feeder at the thick part, or one that froze first",
      "pattern: thick boss on a thin wall",
      "pouring: too hot; metal: gas in it changes how it shrinks",
    ],
    sand: [cause("compactability", "high", practice, "common practice")],
  },
});

/**
 * The fault of that name, capitals and the other usual names apart; undefined where none is known.
 * @example castingFaultNamed("Blowholes") // "gas holes"
 */
export function castingFaultNamed(text: string): CastingFault | undefined {
  const name = text.trim().replace(/\s+/g, " ").toLowerCase();
  return castingFaults.find((fault) => fault === name || castingFaultRows[fault].alias.includes(name));
}

/** Every name that is known, for the nearest to a misspelt one. */
export const castingFaultWords: readonly string[] = Object.freeze(
  castingFaults.flatMap((fault) => [fault, ...castingFaultRows[fault].alias]),
);
