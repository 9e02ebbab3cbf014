// Further sets of the NIST Statistical Reference Datasets that have no file in nist/; read in public code that cites them.

/** P. Pontius: deflection of a load cell, load; the second run of twenty loads repeats the first. */
const loads = Array.from({ length: 20 }, (_, k) => 150_000 * (k + 1));
export const pontius = {
  x: [...loads, ...loads],
  y: [
    0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822,
    1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, 0.11052, 0.22018, 0.32939, 0.43886,
    0.54798, 0.65739, 0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965,
    1.84696, 1.95445, 2.06177, 2.16829,
  ], // biome-ignore format: as the table runs
};

/** Box, Hunter & Hunter, Statistics for Experimenters (1978), 483–487: oxygen demand over days. */
export const boxBod = { x: [1, 2, 3, 5, 7, 10], y: [109, 149, 149, 191, 213, 224] };

/** Daniel & Wood, Fitting Equations to Data (1980), 428–431: energy of a lamp over its temperature. */
export const danWood = {
  x: [1.309, 1.471, 1.49, 1.565, 1.611, 1.68],
  y: [2.138, 3.421, 3.597, 4.34, 4.882, 5.66],
};
