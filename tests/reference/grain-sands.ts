// The published sievings of folk and d-values, for the rows and for the tests beside them.

import { byOpening } from "../sand/curve-sands.ts";

/** Folk, Petrology of Sedimentary Rocks, page 52 of the digitised copy: 0–1, 1–2, 2–3, 3–4 phi and the pan, taken as 5. */
export const folk = byOpening(
  [
    [1, 0],
    [0.5, 5],
    [0.25, 10],
    [0.125, 30],
    [0.0625, 20],
  ],
  5,
);

/** J. Anderson, Historical Geology Lab Manual, Georgia Perimeter College: "Example of sieve analysis data". */
export const eocene = byOpening(
  [
    [2, 2.95],
    [1, 4.95],
    [0.5, 13.36],
    [0.25, 9.55],
    [0.125, 2.13],
    [0.0625, 0.46],
  ],
  0.02,
);

/** A problem of Das as a student sheet solves it; the sheet's own, older openings. */
export const das = byOpening(
  [
    [4.76, 0],
    [2, 21.6],
    [0.84, 49.5],
    [0.42, 102.6],
    [0.25, 89.1],
    [0.15, 95.6],
    [0.074, 60.4],
  ],
  31.2,
);
