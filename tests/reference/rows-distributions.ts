// Tables of distributions against handbooks and a general-purpose library.

import { erf, erfc, inverseErfc } from "../../lib/numbers/error-function.ts";
import { fQuantile } from "../../lib/numbers/f-distribution.ts";
import { normalQuantile } from "../../lib/numbers/normal.ts";
import { studentTQuantile } from "../../lib/numbers/student-t.ts";
import { scipyFits } from "../numbers/scipy-fits.ts";
import type { Published } from "./published.ts";

export const distributionRows: readonly Published[] = [
  {
    figure: "t, 97.5 %, 1 to 10 and 30 degrees of freedom",
    source: "abramowitz",
    theirs: [
      "12.706",
      "4.303",
      "3.182",
      "2.776",
      "2.571",
      "2.447",
      "2.365",
      "2.306",
      "2.262",
      "2.228",
      "2.042",
    ],
    ours: () => [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 30].map((df) => studentTQuantile(0.975, df)),
    tag: "from memory",
    note: "table 26.10",
  },
  {
    figure: "normal deviates at 90, 95, 97.5, 99, 99.5 %",
    source: "abramowitz",
    theirs: ["1.28155", "1.64485", "1.95996", "2.32635", "2.57583"],
    ours: () => [0.9, 0.95, 0.975, 0.99, 0.995].map(normalQuantile),
    tag: "from memory",
    note: "table 26.5",
  },
  {
    figure: "F, 95 %, at (1, 10), (2, 10), (5, 10), (10, 10), (9, 40)",
    source: "abramowitz",
    theirs: ["4.965", "4.103", "3.326", "2.978", "2.124"],
    ours: () =>
      (
        [
          [1, 10],
          [2, 10],
          [5, 10],
          [10, 10],
          [9, 40],
        ] as const
      ).map(([a, b]) => fQuantile(0.95, a, b)),
    tag: "from memory",
    note: "table 26.9",
  },
  {
    figure: "error function at 0.5, 1, 2; complement at 2 and 5; inverse at a half",
    source: "abramowitz",
    theirs: [
      "0.5204998778",
      "0.8427007929",
      "0.995322265",
      "4.677734981e-3",
      "1.537459794e-12",
      "0.4769362762",
    ],
    ours: () => [erf(0.5), erf(1), erf(2), erfc(2), erfc(5), inverseErfc(0.5)],
    agree: { digits: 8 },
    tag: "from memory",
    note: "tables 7.1 and 7.3",
  },
  {
    figure: "quantiles of F by SciPy",
    source: "scipy",
    theirs: scipyFits["f quantile"].map(([, , , x]) => String(x)),
    ours: () => scipyFits["f quantile"].map(([p, a, b]) => fQuantile(p, a, b)),
    agree: { digits: 12 },
    tag: "computed there",
  },
];
