// The curves of a trial as equations, with their coefficients' ±, and what a repeat should find by them.

import { namesTogether } from "../finding/batch-names.ts";
import { axisName } from "../finding/trial-axis.ts";
import { studentTQuantile } from "../numbers/distributions.ts";
import { printFigure, printNumber } from "../quantity/print.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Block, Section, TableBlock, TableCell, TableColumn, Text } from "./blocks.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";
import { repeatTable } from "./write-up-repeat.ts";

/** A table of the fits, their equation in words, and the interval of a new batch at five places. */
export function writeUpFits(report: TrialReport, units: ShownUnits): Section {
  const fitted = report.properties.filter(({ curve }) => curve.fit !== undefined);
  const leaning = report.properties.filter(({ curve }) => curve.prior !== undefined);
  const blocks: Block[] = [];
  if (fitted.length > 0) {
    blocks.push({ kind: "prose", text: equation(report, fitted) }, fitTable(fitted, units), {
      kind: "list",
      items: notes(report, fitted),
    });
  }
  if (leaning.length > 0) {
    blocks.push({
      kind: "list",
      items: leaning.map(({ test, curve }) => `${test}: ${curve.prior!.says} (${curve.prior!.source}).`),
    });
  }
  const curved = [...fitted, ...leaning];
  if (curved.length > 0) blocks.push(repeatTable(report, curved, units));
  return { role: "result", title: "The curves as equations", blocks };
}

function equation(report: TrialReport, fitted: readonly TrialProperty[]): Text {
  const blocked = fitted.some(({ curve }) => curve.blocks.length > 0);
  const bent = fitted.some(({ curve }) => curve.form === "curve");
  return [
    "Least squares through the batches: ",
    { em: `y = b₀ + b₁u${bent ? " + b₂u²" : ""}${blocked ? " + offsets of the blocks" : ""}` },
    `, u = (${axisName(report)} − middle) / half, with middle and half of what was tried; each coefficient with its 95 % interval by Student's\u00a0t.`,
  ];
}

function fitTable(fitted: readonly TrialProperty[], units: ShownUnits): TableBlock {
  const blocks = [...new Set(fitted.flatMap(({ curve }) => curve.blocks))];
  const number = (head: string, unit?: string): TableColumn => ({
    head,
    ...(unit === undefined ? {} : { unit }),
    align: "number",
  });
  return {
    kind: "table",
    name: "fits",
    caption:
      "The fits: coefficients and residual scatter in the unit of the property; s the scatter of a batch about its curve",
    columns: [
      { head: "Property", align: "text" },
      number("b₀"),
      number("b₁"),
      { ...number("b₂"), spare: true },
      ...blocks.map((name) => number(`Offset of ${name}`)),
      number("s"),
      number("Degrees of freedom"),
      number("Batches"),
      number("Middle"),
      number("Half"),
    ],
    rows: fitted.map(({ test, unit, curve }) => {
      const { coefficients, standardErrors, residualSd, degreesOfFreedom } = curve.fit!;
      const system = units.of(test);
      const turned = (value: number): number => inShownUnit(value, unit, system).value;
      const powers = coefficients.length - curve.blocks.length;
      const cell = (k: number): TableCell =>
        coefficient(coefficients[k]!, standardErrors[k]!, degreesOfFreedom, turned);
      const none: TableCell = { text: "" };
      const named = shownUnit(unit, system);
      return [
        named === "" ? test : `${test}, ${named}`,
        cell(0),
        cell(1),
        powers > 2 ? cell(2) : none,
        ...blocks.map((name) => {
          const k = curve.blocks.indexOf(name);
          return k < 0 ? none : cell(powers + k);
        }),
        plain(turned(residualSd), 3, residualSd),
        { text: String(degreesOfFreedom), number: degreesOfFreedom },
        { text: String(curve.used.length), number: curve.used.length },
        plain((curve.from + curve.to) / 2, 4),
        plain((curve.to - curve.from) / 2, 4),
      ];
    }),
  };
}

/** Strengths and densities turn without an offset, and so does every coefficient of theirs. */
function coefficient(
  value: number,
  standardError: number,
  df: number,
  turned: (value: number) => number,
): TableCell {
  const half = df > 0 ? studentTQuantile(0.975, df) * standardError : Number.NaN;
  const [low, high] = [turned(value - half), turned(value + half)];
  if (!Number.isFinite(half)) return plain(turned(value), 4, value);
  return { text: printFigure({ value: turned(value), low, high }).text, number: value };
}

function plain(shown: number, digits: number, number = shown): TableCell {
  return Number.isFinite(shown)
    ? { text: String(Number(shown.toPrecision(digits))), number }
    : { text: "not known" };
}

function notes(report: TrialReport, fitted: readonly TrialProperty[]): Text[] {
  const blocked = fitted.find(({ curve }) => curve.blocks.length > 0);
  const first = report.rows.find(({ batch }) => batch.block !== undefined)?.batch.block;
  const misfits = report.lackOfFit.map(
    ({ test, p }) =>
      `Lack of fit of ${test}, held against batches of one level: p ${p < 0.001 ? "below 0.001" : printNumber(p, 3)}.`,
  );
  const names = report.rows.map(({ batch }) => batch.name);
  const partial = fitted.flatMap(({ test, curve }): Text[] => {
    if (curve.used.length === names.length) return [];
    return [
      `${test} rests on ${namesTogether(
        curve.used.map((i) => names[i]!),
        names,
      )}.`,
    ];
  });
  return [
    ...(blocked && first !== undefined
      ? [
          `An offset is that of the block against ${first}; the curves as drawn, and the aim, stand at the mean of the batches.`,
        ]
      : []),
    ...partial,
    ...misfits,
  ];
}
