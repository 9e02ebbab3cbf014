// Published points of clay, water, strength and permeability, as they were printed: what typical curves are drawn with.

import type { BandTag } from "./band.ts";
import type { Bond } from "./metals.ts";

export interface PublishedPoint {
  /** Short name on a chart. */
  readonly label: string;
  readonly bond: Bond;
  /** % of clay as the source counts it; see clayIs. Undefined: not printed. */
  readonly clayPercent?: number;
  readonly clayIs?: "bentonite added, basis not said" | "AFS clay" | "live bentonite";
  /** Water, % of damp mass (or not said, see note). */
  readonly moisturePercent?: number;
  readonly strengthKPa?: number;
  /** Ends where the source gives a range; strengthKPa is then its middle. */
  readonly strengthRangeKPa?: { readonly low: number; readonly high: number };
  readonly permeability?: number;
  readonly gfn?: number;
  readonly source: string;
  readonly tag: BandTag;
  readonly note?: string;
}

const brawijaya = {
  bond: "bentonite",
  clayIs: "bentonite added, basis not said",
  source: "Universitas Brawijaya casting laboratory, groups' joint table 2.2 (student report)",
  tag: "read",
} as const;
const brawijayaRows: readonly (readonly [clay: number, water: number, number: number, note?: string])[] = [
  [6, 3, 240],
  [6, 4, 240],
  [6, 5, 225],
  [6, 6, 210],
  [6, 6, 220, "the same cell in a second group's copy of the table"],
  [8, 3, 215],
  [8, 4, 220],
  [8, 5, 214],
  [8, 6, 210],
];
/** The one published series that varies both clay and water: nine readings of one sand. */
export const permeabilitySeries = brawijayaRows.map(([clayPercent, moisturePercent, permeability, note]) => ({
  ...brawijaya,
  label: `Brawijaya, ${moisturePercent} % water`,
  clayPercent,
  moisturePercent,
  permeability,
  ...(note === undefined ? {} : { note }),
}));

const sebelas = {
  label: "UNS, Al-Si",
  bond: "bentonite",
  source:
    "Universitas Sebelas Maret, thesis on water in bentonite sand and porosity of Al-Si castings (abstract); clay not printed",
  tag: "read",
} as const;
const foseco = {
  bond: "bentonite",
  clayIs: "live bentonite",
  source: "Brown (ed.), Foseco Ferrous Foundryman's Handbook (from memory)",
  tag: "from memory",
} as const;
const ado = {
  bond: "natural",
  clayIs: "AFS clay",
  source:
    "Shuaib-Babata, Abegunde & Ambali, Arid Zone J. Eng. Tech. Env. 13(6), 2017, 718–733 (abstract); water as found",
  tag: "read",
} as const;
const kwali = {
  bond: "natural",
  clayIs: "AFS clay",
  source: "Dim & Abdullahi 2021, Federal University of Technology Minna, repository 18117 (abstract)",
  tag: "read",
  note: "the abstract calls the finer sand coarse: labels or numbers are swapped",
} as const;
const ilorin = {
  bond: "natural",
  source: "Aweda & Jimoh, J. Res. Inf. Civ. Eng. 6(2) 2009; at the best water",
  tag: "read",
} as const;
const onitsha = {
  label: "Onitsha and Ukpor",
  bond: "natural",
  source:
    "Edoziuno, Utu & Nwaeju, Int. J. Res. Adv. Eng. Tech. 3(2) 2017, 102–106 (abstract); clay not printed",
  tag: "read",
} as const;

const list: readonly PublishedPoint[] = [
  ...permeabilitySeries,
  {
    label: "Glossary, 2 % water",
    bond: "bentonite",
    clayIs: "bentonite added, basis not said",
    clayPercent: 4,
    moisturePercent: 2,
    permeability: 80,
    gfn: 65,
    source: "Trade additive glossary 2018, base sand of its alginate entry",
    tag: "read",
  },
  { ...sebelas, moisturePercent: 4, permeability: 103.67, strengthKPa: 47.56 },
  { ...sebelas, moisturePercent: 8, permeability: 83, strengthKPa: 39 },
  {
    label: "UNS, 50 g bentonite",
    bond: "bentonite",
    permeability: 104.67,
    strengthKPa: 61.87,
    source:
      "Tegar et al., Universitas Sebelas Maret, bentonite in river and silica sand 80:20; mass of the batch not printed",
    tag: "read",
  },
  {
    ...foseco,
    label: "Jolt, squeeze",
    clayPercent: 5.25,
    moisturePercent: 3.5,
    strengthKPa: 85,
    strengthRangeKPa: { low: 70, high: 100 },
  },
  {
    ...foseco,
    label: "High pressure",
    clayPercent: 8,
    moisturePercent: 2.85,
    strengthKPa: 175,
    strengthRangeKPa: { low: 150, high: 200 },
  },
  {
    ...ado,
    label: "Ureje",
    clayPercent: 12,
    moisturePercent: 12.04,
    gfn: 63.27,
    permeability: 86.2,
    strengthKPa: 120.9,
  },
  {
    ...ado,
    label: "Omisanjana",
    clayPercent: 13,
    moisturePercent: 12.25,
    gfn: 61.08,
    permeability: 87.5,
    strengthKPa: 63.6,
  },
  {
    ...ado,
    label: "Odo Ayo",
    clayPercent: 10,
    moisturePercent: 12.23,
    gfn: 66.98,
    permeability: 86.3,
    strengthKPa: 70.9,
  },
  {
    ...ado,
    label: "Ogbese",
    clayPercent: 6,
    moisturePercent: 11.92,
    gfn: 61.12,
    permeability: 88.2,
    strengthKPa: 82,
  },
  {
    label: "Yola",
    bond: "natural",
    clayIs: "AFS clay",
    clayPercent: 26,
    moisturePercent: 5,
    gfn: 88.05,
    strengthKPa: 118.6,
    source: "Ihom et al., Leonardo Electronic J. of Practices and Technologies 19, 2011, 85–96 (abstract)",
    tag: "read",
  },
  {
    ...kwali,
    label: "Kwali B",
    clayPercent: 35.7,
    moisturePercent: 4,
    gfn: 87.78,
    permeability: 6,
    strengthKPa: 84.81,
  },
  {
    ...kwali,
    label: "Kwali A",
    clayPercent: 55.6,
    moisturePercent: 9,
    gfn: 73.49,
    permeability: 4.9,
    strengthKPa: 127.55,
  },
  { ...ilorin, label: "Ilorin", moisturePercent: 9, permeability: 50, strengthKPa: 52 },
  { ...ilorin, label: "Ilesha", moisturePercent: 8, permeability: 47.5, strengthKPa: 50 },
  { ...onitsha, moisturePercent: 4, strengthKPa: 43.4 },
  { ...onitsha, moisturePercent: 6, permeability: 12 },
];

/** Every published point held here; bonds never mix on one chart. */
export const publishedPoints: readonly PublishedPoint[] = Object.freeze(
  list.map((point) => Object.freeze(point)),
);

/**
 * Water of permeability's peak over water of strength's peak: 1.5, from two sources that agree (6 over 4 % in sand with
 * Ukpor clay, Edoziuno et al. 2017; 0.6 over 0.4 of the clay in bentonite sand, Subbarao & Rammohan).
 */
export const peakWaterRatio = 1.5;
