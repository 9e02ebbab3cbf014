// What sand and metal bring to a mould: conductivity, density, heat. Constants with their sources.

import type { BandTag } from "./band.ts";
import type { Metal } from "./metals.ts";

/** Rammed, dry moulding sand, of constant properties. */
export interface SandHeat {
  readonly name: string;
  readonly conductivityWMK: number;
  readonly densityKgM3: number;
  readonly heatJKgK: number;
  readonly source: string;
  readonly tag: BandTag;
}

/** Three published sets; they differ by what sand and what temperature they are for. */
export const sandHeats: readonly SandHeat[] = Object.freeze([
  {
    name: "Flemings",
    conductivityWMK: 0.61,
    densityKgM3: 1500,
    heatJKgK: 1130,
    source: "Flemings, Solidification Processing (1974), from memory",
    tag: "from memory",
  },
  {
    name: "Ghosh & Mallik",
    conductivityWMK: 0.8655,
    densityKgM3: 1600,
    heatJKgK: 1170,
    source: "Ghosh & Mallik, Manufacturing Science, example 2.5",
    tag: "read",
  },
  {
    name: "cost-estimating page",
    conductivityWMK: 0.5,
    densityKgM3: 1600,
    heatJKgK: 1170,
    source: "a general manufacturing page's default sand",
    tag: "read",
  },
]);

/** k/(ρ c), m²/s. Example: 0.61, 1500, 1130: 3.60e-7. */
export const diffusivityM2S = ({ conductivityWMK, densityKgM3, heatJKgK }: SandHeat): number =>
  conductivityWMK / (densityKgM3 * heatJKgK);

/** √(k ρ c), J/(m² K √s). Example: 0.61, 1500, 1130: 1017. */
export const effusivity = ({ conductivityWMK, densityKgM3, heatJKgK }: SandHeat): number =>
  Math.sqrt(conductivityWMK * densityKgM3 * heatJKgK);

/** A metal that gives off all its latent heat at one temperature. */
export interface MetalHeat {
  readonly name: string;
  readonly freezesC: number;
  readonly latentKJKg: number;
  readonly densityKgM3: number;
  readonly liquidJKgK: number;
  readonly solidJKgK: number;
  /** Usual pouring temperature, where the log says none, °C. */
  readonly pouredC: number;
  readonly source: string;
  readonly tag: BandTag;
}

const aluminium = { latentKJKg: 397, densityKgM3: 2400, liquidJKgK: 1080, solidJKgK: 1130, pouredC: 720 };

/** Those that stand for a metal of the trade: two for aluminium, whose alloys freeze lower than it does. */
export const metalHeats: { readonly [metal in Metal]: readonly MetalHeat[] } = Object.freeze({
  aluminium: [
    {
      name: "aluminium",
      freezesC: 660.3,
      ...aluminium,
      source: "latent heat and melting point of aluminium, CRC, from memory",
      tag: "from memory",
    },
    {
      name: "aluminium-silicon, its freezing gathered at 595 °C",
      freezesC: 595,
      ...aluminium,
      source: "Al–Si foundry alloy, 615 to 555 °C, from memory",
      tag: "from memory",
    },
  ],
  "brass and bronze": [
    {
      name: "tin bronze, its freezing gathered at 950 °C",
      freezesC: 950,
      latentKJKg: 200,
      densityKgM3: 8000,
      liquidJKgK: 480,
      solidJKgK: 430,
      pouredC: 1150,
      source: "tin bronze, 1000 to 850 °C, from memory",
      tag: "from memory",
    },
  ],
  "copper-nickel": [
    {
      name: "copper-nickel, its freezing gathered at 1200 °C",
      freezesC: 1200,
      latentKJKg: 230,
      densityKgM3: 8200,
      liquidJKgK: 530,
      solidJKgK: 480,
      pouredC: 1350,
      source: "copper with 30 % nickel, from memory",
      tag: "from memory",
    },
  ],
  "grey iron": [iron("grey iron")],
  "malleable iron": [iron("white iron")],
  steel: [
    {
      name: "steel",
      freezesC: 1500,
      latentKJKg: 272,
      densityKgM3: 7200,
      liquidJKgK: 820,
      solidJKgK: 680,
      pouredC: 1590,
      source: "carbon steel, from memory; latent heat as Ghosh & Mallik's iron",
      tag: "from memory",
    },
  ],
});

function iron(name: string): MetalHeat {
  return {
    name,
    freezesC: 1150,
    latentKJKg: 240,
    densityKgM3: 7000,
    liquidJKgK: 850,
    solidJKgK: 750,
    pouredC: 1380,
    source: `${name}, from memory`,
    tag: "from memory",
  };
}
