// How much water moves compactability, as far apart as it is found in print: for a founder whose own batches do not tell yet.

/**
 * Points of moisture (% of damp mass) for 10 points of compactability, from the least that was found in print to the
 * most; a home sand may lie anywhere between. Turned over: 10 to 48 points of compactability for 1 % of water.
 *
 * - low: derived, the equilibrium moisture of fully mulled iron-foundry sand of 8 % live clay at 45 % less that at 35 %
 *   (ICRI Report 610; at 7 and 11 % live clay it would be 0.19 and 0.29).
 * - high: read, 10 over a shop's ratio of compactability to moisture of 10 (it prints 10 to 12). A ratio is no slope, and
 *   the source is weak.
 *
 * Bentonite sand, moist of damp mass, 35 to 45 % compactability; status: two sources, agreed by nobody. 2026.
 */
export const publishedWaterSensitivity = {
  low: 0.21,
  high: 1,
  source:
    "ICRI Report 610: equilibrium moisture, 8 % live clay, 35 to 45 % compactability; shop article on testing green sand (anonymous repost): compactability over moisture 10 to 12; that a home sand lies evenly between is our own",
} as const;
