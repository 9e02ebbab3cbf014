// What a mass costs: by the bag that must be bought, and by what is used of it.

import { requireAboveZero, requireFromZero } from "./require.ts";

export interface Purchase {
  /** Whole bags to buy. */
  readonly bags: number;
  readonly costOfBags: number;
  readonly costOfUse: number;
  /** Left over in the last bag, kg. */
  readonly leftKg: number;
}

/**
 * Bags to buy for a mass, and what they cost. needKg: 0 or more, as weighed; bagKg > 0: what one bag or delivery holds;
 * bagCost: 0 or more, in any currency. Else RangeError. A need within a billionth of whole bags is that number.
 * Source: arithmetic.
 * @example purchaseOf({ needKg: 30, bagKg: 25, bagCost: 14 }) // { bags: 2, costOfBags: 28, costOfUse: 16.80 }
 */
export function purchaseOf({
  needKg,
  bagKg,
  bagCost,
}: {
  readonly needKg: number;
  readonly bagKg: number;
  readonly bagCost: number;
}): Purchase {
  requireFromZero("purchaseOf", { needKg, bagCost });
  requireAboveZero("purchaseOf", { bagKg });
  const bags = Math.max(0, Math.ceil(needKg / bagKg - 1e-9));
  return {
    bags,
    costOfBags: bags * bagCost,
    costOfUse: (needKg / bagKg) * bagCost,
    leftKg: Math.max(0, bags * bagKg - needKg),
  };
}
