// Every band once, for tables of sources: a row whose source names no metal stands once and says so.

import type { Band } from "./band.ts";
import { bands } from "./bands.ts";
import { bondNames, metalNames } from "./metals.ts";

/**
 * All bands, bond by bond and metal by metal; with anyMetal only the first metal's copy is kept.
 * @example everyBand().length > 40 // true
 */
export function everyBand(): readonly Band[] {
  return bondNames.flatMap((bond) =>
    metalNames.flatMap((metal, place) =>
      bands({ metal, bond }).filter((band) => band.anyMetal !== true || place === 0),
    ),
  );
}
