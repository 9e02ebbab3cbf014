// Ranges of bentonite sand whose sources name no metal: each stands for every metal, and says so.

import type { Band } from "./band.ts";
import { metalNames } from "./metals.ts";
import { asBands, type BandRow } from "./rows-bands.ts";

const mix = { clayIs: "bentonite added", basis: "the mix, dry or damp not said" } as const;
const generic = "metalcastinginstitute.com, green sand in general; names no metal";
const smallShop = "A supplier's page for small shops (New Zealand); names no metal";
const thesis =
  "Standard practice as given in a thesis of Universitas Sebelas Maret on kinds of bentonite; names no metal";
const shopArticle = "A Chinese shop article on testing green sand (anonymous repost, weak); names no metal";
const problems =
  "Densities in published casting problems (1500 to 1682 kg/m³; one of them from memory); name neither bond nor practice, taken as bentonite";

const read: readonly (readonly [Pick<Band, "claim" | "tag"> & { practice?: string }, BandRow[]])[] = [
  [
    { claim: "recommended", tag: "read" },
    [
      ["clay", 7.5, 9, thesis, mix],
      ["moisture", 3.5, 4.5, thesis],
    ],
  ],
  [
    { claim: "worked", tag: "read" },
    [
      ["clay", 7, 13, generic, mix],
      ["moisture", 2, 4, generic],
      ["clay", 5, 11, smallShop, mix],
      ["compactability", 35, 50, "Usual in shops, M. Ring, trade article on compactability; names no metal"],
      [
        "green compression",
        30,
        160,
        "Green sands in general, two laboratory sheets; name neither metal nor bond, taken as bentonite",
      ],
      [
        "green compression",
        23.8,
        104.6,
        "Quoted to Heine 1976, p. 95, by a paper of Universitas Brawijaya; names neither metal nor bond here, taken as bentonite",
      ],
    ],
  ],
  [{ practice: "machine", claim: "worked", tag: "read" }, [["moisture", 2.5, 4, shopArticle]]],
  [
    { practice: "machine, high pressure", claim: "worked", tag: "read" },
    [["compactability", 30, 40, shopArticle]],
  ],
  [{ claim: "worked", tag: "derived" }, [["density", 1.5, 1.68, problems]]],
  [
    { practice: "standard specimen", claim: "worked", tag: "from memory" },
    [
      [
        "density",
        1.41,
        1.7,
        "Specimens of 145 to 175 g in 102.96 cm³ (masses from memory of test practice); names no metal",
      ],
    ],
  ],
];

export const anyMetalBands: readonly Band[] = Object.freeze(
  metalNames.flatMap((metal) =>
    read.flatMap(([shared, rows]) => asBands({ ...shared, metal, bond: "bentonite", anyMetal: true }, rows)),
  ),
);
