// Least squares against the certified values of the NIST Statistical Reference Datasets (StRD).

import { fitCurve } from "../../lib/numbers/curve-fit.ts";
import { fitLinear } from "../../lib/numbers/least-squares.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { mulledStrengthKPa } from "../../lib/sand/mulling-time.ts";
import { nistSet, nistText, sirstv } from "./nist-data.ts";
import { boxBod, danWood, pontius } from "./nist-read.ts";
import type { Published } from "./published.ts";
import type { Source } from "./sources.ts";

const columns = (name: string): { x: number[]; y: number[] } => {
  const { rows } = nistSet(name);
  return { x: rows.map((row) => row[1]!), y: rows.map((row) => row[0]!) };
};
/** The certified figures as they are written in the file: estimates, then the deviations. */
const certified = (name: string, from = 0): string[] => {
  const lines = [...nistText(name).matchAll(/^\s+[Bb]\d+ +=? *([-+.\dE ]+)$/gm)];
  return [0, 1].flatMap((k) => lines.map(([, rest]) => plain(rest!.trim().split(/\s+/)[from + k]!)));
};
const labelled = (name: string, label: string): string =>
  plain(new RegExp(`${label}:?\\s+([-+.\\dE]+)`).exec(nistText(name))![1]!);
const plain = (text: string): string =>
  text
    .replace("E", "e")
    .replace(/\.$/, "")
    .replace(/^(-?)\./, "$10.");

const polynomial = (
  name: string,
  degree: number,
  least: number,
  words: string,
  intercept = true,
): Published => ({
  figure: `${words}: coefficients, their deviations, residual deviation`,
  source: "nist linear",
  theirs: [...certified(name), labelled(name, "Standard Deviation")],
  ours: () => {
    const { x, y } = columns(name);
    const fit = fitPolynomial(x, y, degree, { intercept });
    return [...fit.coefficients, ...fit.standardErrors, fit.residualSd];
  },
  agree: { digits: least },
  tag: "read",
  note: name,
});

type Model = (x: number, b: readonly number[]) => number;
const curves: readonly (readonly [name: string, words: string, Model])[] = [
  ["Misra1a", "rise to a plateau", (x, b) => b[0]! * (1 - Math.exp(-b[1]! * x))],
  ["Rat42", "growth of pasture", (x, b) => b[0]! / (1 + Math.exp(b[1]! - b[2]! * x))],
  [
    "MGH09",
    "ratio of two parabolas",
    (x, b) => (b[0]! * (x ** 2 + x * b[1]!)) / (x ** 2 + x * b[2]! + b[3]!),
  ],
  [
    "Thurber",
    "ratio of two cubics",
    (x, b) =>
      (b[0]! + b[1]! * x + b[2]! * x ** 2 + b[3]! * x ** 3) /
      (1 + b[4]! * x + b[5]! * x ** 2 + b[6]! * x ** 3),
  ],
];

const misra = () => columns("Misra1a");
/** A curve whose data are given; from the second of the published starts. */
const further = (
  figure: string,
  source: Source,
  theirs: readonly string[],
  data: () => { readonly x: readonly number[]; readonly y: readonly number[] },
  start: readonly number[],
  model: Model,
): Published => ({
  figure: `${figure}: parameters, their deviations, sum of squares`,
  source,
  theirs,
  ours: () => {
    const { x, y } = data();
    const fit = fitCurve(model, start, x, y);
    return [...fit.parameters, ...fit.standardErrors, fit.residualSumOfSquares];
  },
  agree: { digits: 8 },
  tag: "read",
  note: "in public code that cites it",
});

export const fitRows: readonly Published[] = [
  polynomial("Norris", 1, 11, "a straight line"),
  polynomial("NoInt1", 1, 13, "a line through 0, eleven points", false),
  polynomial("NoInt2", 1, 13, "a line through 0, three points", false),
  polynomial("Filip", 10, 12, "degree 10, which normal equations lose"),
  polynomial("Wampler3", 5, 9, "degree 5 with scatter"),
  polynomial("Wampler4", 5, 9, "degree 5 with a hundred times the scatter"),
  ...(["Wampler1", "Wampler2"] as const).map(
    (name): Published => ({
      figure: `degree 5, points on the curve: coefficients, ${name}`,
      source: "nist linear",
      theirs: certified(name).slice(0, 6),
      ours: () => fitPolynomial(columns(name).x, columns(name).y, 5).coefficients,
      agree: { digits: name === "Wampler1" ? 9 : 12 },
      tag: "read",
    }),
  ),
  {
    figure: "degree 5 with ten thousand times the scatter: residual deviation, R²",
    source: "nist linear",
    theirs: ["23601450.2379268", "0.00224668921574940"],
    ours: () => {
      const [clean, noisy] = [columns("Wampler1"), columns("Wampler4")];
      const y = clean.y.map((value, i) => value + 100 * (noisy.y[i]! - value));
      const { residualSd, rSquared } = fitPolynomial(clean.x, y, 5);
      return [residualSd, rSquared];
    },
    agree: { digits: 11 },
    tag: "from memory",
    note: "Wampler5; its data made from Wampler1 and 4",
  },
  {
    figure: "six columns that move together: coefficients, their deviations, residual deviation",
    source: "nist linear",
    theirs: [...certified("Longley"), labelled("Longley", "Standard Deviation")],
    ours: () => {
      const { rows } = nistSet("Longley");
      const fit = fitLinear(
        rows.map((row) => [1, ...row.slice(1)]),
        rows.map((row) => row[0]!),
      );
      return [...fit.coefficients, ...fit.standardErrors, fit.residualSd];
    },
    agree: { digits: 13 },
    tag: "read",
    note: "Longley",
  },
  {
    figure:
      "a parabola whose columns differ by a factor of 1e13: coefficients, deviations, residual deviation, R²",
    source: "nist linear",
    theirs: [
      "0.673565789473684e-3",
      "0.732059160401003e-6",
      "-0.316081871345029e-14",
      "0.107938612033077e-3",
      "0.157817399981659e-9",
      "0.486652849992036e-16",
      "0.205177424076185e-3",
      "0.999999900178537",
    ],
    ours: () => {
      const fit = fitPolynomial(pontius.x, pontius.y, 2);
      return [...fit.coefficients, ...fit.standardErrors, fit.residualSd, fit.rSquared];
    },
    agree: { digits: 10 },
    tag: "read",
    note: "Pontius, in public code that cites it",
  },
  {
    figure: "one-way analysis of variance: residual deviation, R²",
    source: "nist sirstv",
    theirs: ["0.104076068334656", "0.190999039051129"],
    ours: () => {
      const y = sirstv().flat();
      const fit = fitLinear(
        y.map((_, i) => [0, 1, 2, 3, 4].map((k) => (Math.floor(i / 5) === k ? 1 : 0))),
        y,
      );
      return [fit.residualSd, fit.rSquared];
    },
    agree: { digits: 11 },
    tag: "read",
    note: "SiRstv",
  },
  ...curves.flatMap(([name, words, model]) =>
    [0, 1].map(
      (start): Published => ({
        figure: `${words}, start ${start + 1}: parameters, their deviations, sum of squares`,
        source: "nist curves",
        theirs: [...certified(name, 2), labelled(name, "Residual Sum of Squares")],
        ours: () => {
          const { x, y } = columns(name);
          const from = nistSet(name).certified.map((row) => row[start]!);
          const fit = fitCurve(model, from, x, y);
          return [...fit.parameters, ...fit.standardErrors, fit.residualSumOfSquares];
        },
        agree: { digits: 9 },
        tag: "read",
        note: name,
      }),
    ),
  ),
  further(
    "mulling's own curve from nothing, BoxBOD",
    "nist curves",
    ["2.1380940889e2", "5.4723748542e-1", "1.2354515176e1", "1.0455993237e-1", "1.1680088766e3"],
    () => boxBod,
    [100, 0.75],
    (minutes, [full, rate]) => mulledStrengthKPa({ minutes, startKPa: 0, fullKPa: full!, tauMin: 1 / rate! }),
  ),
  further(
    "a power, DanWood",
    "nist curves",
    ["7.6886226176e-1", "3.8604055871", "1.8281973860e-2", "5.1726610913e-2", "4.3173084083e-3"],
    () => danWood,
    [0.7, 4],
    (x, b) => b[0]! * x ** b[1]!,
  ),
  further(
    "adsorption, Misra1b",
    "nist curves",
    ["3.3799746163e2", "3.9039091287e-4", "3.1643950207", "4.2547321834e-6", "7.5464681533e-2"],
    misra,
    [300, 0.0002],
    (x, b) => b[0]! * (1 - (1 + (b[1]! * x) / 2) ** -2),
  ),
  further(
    "adsorption, Misra1c",
    "nist curves",
    ["6.3642725809e2", "2.0813627256e-4", "4.6638326572", "1.7728423155e-6", "4.0966836971e-2"],
    misra,
    [600, 0.0002],
    (x, b) => b[0]! * (1 - (1 + 2 * b[1]! * x) ** -0.5),
  ),
];
