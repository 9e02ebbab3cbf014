// Published samples for means, ranks and rows in time; read by the rows and by the tests beside them.

import { nistText } from "./nist-data.ts";

const miles = nistText("AUTO83B").replace(/^#.*$/gm, "");
/** NIST/SEMATECH e-Handbook 1.3.5.3: miles per gallon of American and of Japanese cars. */
export const [american, japanese] = miles
  .split("JAPAN")
  .map((part) => (part.match(/\d+/g) ?? []).map(Number)) as [number[], number[]];

/** Hollander & Wolfe, Nonparametric Statistical Methods (1973): lightness of tuna against panel scores; from memory. */
export const tuna = {
  x: [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1],
  y: [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8],
};
/** A textbook example of ten pairs, test scores against hours: Σd² = 194; from memory. */
export const scores = {
  x: [106, 100, 86, 101, 99, 103, 97, 113, 112, 110],
  y: [7, 27, 2, 50, 28, 29, 20, 12, 6, 17],
};

/** Student, The probable error of a mean (1908), after Cushny & Peebles: hours of sleep gained by two drugs. */
export const sleep = {
  first: [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2],
  second: [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
};

/** F. J. Anscombe, Graphs in statistical analysis (1973), first and second set; from memory. */
export const anscombe = {
  x: [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5],
  first: [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68],
  second: [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74],
};

/** A. A. Michelson's speeds of light of 1879, km/s over 1000; NIST StRD Michelso, from memory. */
export const michelson = [
  850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960, 960,
  940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800, 880, 880,
  880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840, 890, 810, 810,
  820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780, 890, 840, 780, 810,
  760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870,
].map((value) => 299 + value / 1000);

/** NIST StRD NumAcc2 to NumAcc4: 1001 values that swing by a tenth about a base. */
export const wave = (base: number): number[] => [
  base + 0.2,
  ...Array.from({ length: 1000 }, (_, k) => base + (k % 2 === 0 ? 0.1 : 0.3)),
];
