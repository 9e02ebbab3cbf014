// How a figure over all rows hangs on the sources of all rows, to the first order.

import { scoreSd } from "../quantity/scores.ts";
import type { Source } from "../quantity/source.ts";
import { shifted } from "../quantity/spread-of.ts";
import { aggregateSlopes } from "./aggregate-slopes.ts";
import { type Design, emptyDesign } from "./design.ts";
import type { OneNode, RowNode } from "./node.ts";
import { asItIs, pointsOf } from "./points.ts";
import { type Doubted, type RowLine, rowLines, standInName } from "./row-lines.ts";
import { bendOf } from "./straight.ts";

export interface Term {
  readonly source: Source;
  /** Change of the figure for one step of the source's score. */
  readonly scale: number;
}

export interface OneLine {
  /** By the source's name. */
  readonly terms: ReadonlyMap<string, Term>;
  readonly variance: number;
  /** False where the figure has to be drawn: the terms are then good for shares only. */
  readonly straight: boolean;
  /** Mean of the second order, and what neither order explains. */
  readonly shift: number;
  readonly rest: number;
  /** The second order at scores w. */
  bend(w: (name: string) => number): number;
}

export interface Lines {
  /** Undefined where a row has too many sources. */
  cell(node: RowNode, row: number): RowLine | undefined;
  one(node: OneNode): OneLine;
  /** Of a cell, figures over all rows resolved into their own sources. */
  termsOf(line: RowLine): ReadonlyMap<string, Term>;
}

const nothing: OneLine = {
  terms: new Map(),
  variance: 0,
  straight: true,
  shift: 0,
  rest: 0,
  bend: () => 0,
};

/** Everything in a sheet that has a ±; figures over all rows are worked out once and kept. */
export function linesOf(doubted: Doubted): Lines {
  const kept = new Map<OneNode, OneLine>();
  const standIns = new Map<string, OneNode>();
  const cell = rowLines(doubted, (node) => {
    standIns.set(standInName(node), node);
    return Math.sqrt(one(node).variance);
  });

  function one(node: OneNode): OneLine {
    const known = kept.get(node);
    if (known) return known;
    const line = !node.doubtful
      ? nothing
      : node.aggregate
        ? lineOfAggregate(node.aggregate)
        : node.spread
          ? lineOfValue(node)
          : lineOfFormula(node);
    kept.set(node, line);
    return line;
  }

  function lineOfValue(node: OneNode): OneLine {
    const design = emptyDesign();
    for (const source of node.spread!.sources) design.take(source, doubted.nameOf(source));
    const line = expanded(node, design);
    const bend = bendOf(line.expansion, line.sources);
    const terms = termsOf(line);
    return {
      terms,
      variance: varianceOfTerms(terms),
      straight: bend !== undefined,
      shift: bend?.shift ?? 0,
      rest: line.expansion.rest,
      bend: (w) => bendAt(line, w),
    };
  }

  /** Its inputs stand in as normal sources: what it is off by is a sum of what they are off by. */
  function lineOfFormula(node: OneNode): OneLine {
    const inputs = node.formula!.inputs.filter(
      (input): input is OneNode => input.per === "sheet" && input.doubtful,
    );
    const design = emptyDesign();
    const spreads = new Map(
      inputs.map((input) => {
        const name = standInName(input);
        const source: Source = { id: name, kind: "method", shape: { kind: "normal" } };
        standIns.set(name, input);
        design.take(source, name);
        return [input, shifted(input.value, Math.sqrt(one(input).variance), source)];
      }),
    );
    const line = expanded(node, design, spreads);
    const terms = termsOf(line);
    const lines = inputs.map(one);
    const slopes = lines.map(({ variance }, k) => slopeOf(line.expansion.first[k]!, variance));
    const { square, pair = [], rest } = line.expansion;
    const own = [...square, ...pair].reduce((all, part) => all + Math.abs(part), rest);
    const over = (part: (line: OneLine) => number): number =>
      lines.reduce((all, input, k) => all + slopes[k]! * part(input), 0);
    return {
      terms,
      variance: varianceOfTerms(terms),
      straight: node.smooth && lines.every(({ straight }) => straight),
      shift: over(({ shift }) => shift),
      rest: own + lines.reduce((all, input, k) => all + Math.abs(slopes[k]! * input.rest), 0),
      bend: (w) => over((input) => input.bend(w)),
    };
  }

  function expanded(
    node: OneNode,
    design: Design,
    spreads?: ReadonlyMap<OneNode, ReturnType<typeof shifted>>,
  ): RowLine {
    const count = design.count();
    const points = pointsOf(asItIs(design.drawing), 0, count, (input) => spreads?.get(input));
    const values = points.one(node);
    const drawn = typeof values === "number" ? new Float64Array(count).fill(values) : values;
    return { expansion: design.read(drawn), sources: design.sources, names: design.names };
  }

  function lineOfAggregate({ fn, p, of }: NonNullable<OneNode["aggregate"]>): OneLine {
    const slopes = aggregateSlopes(fn, p, of.values);
    const sums = new Map<string, { source: Source; scale: number }>();
    let [straight, shift, rest] = [(fn === "sum" || fn === "mean") && of.smooth && !of.far, 0, 0];
    const everyRow = (visit: (line: RowLine, slope: number) => void): void => {
      for (let row = 0; row < slopes.length; row++) {
        if (slopes[row] === 0) continue;
        const line = cell(of, row);
        if (line) visit(line, slopes[row]!);
        else straight = false;
      }
    };
    everyRow((line, slope) => {
      const bend = bendOf(line.expansion, line.sources);
      if (!bend) straight = false;
      shift += slope * (bend?.shift ?? 0);
      rest += Math.abs(slope) * line.expansion.rest;
      line.names.forEach((name, k) => {
        const scale = slope * line.expansion.first[k]!;
        if (scale === 0) return;
        const known = sums.get(name);
        if (known) known.scale += scale;
        else sums.set(name, { source: line.sources[k]!, scale });
      });
    });
    const terms = resolved(sums);
    return {
      terms,
      variance: varianceOfTerms(terms),
      straight,
      shift,
      rest,
      bend(w) {
        let all = 0;
        everyRow((line, slope) => {
          all += slope * bendAt(line, w);
        });
        return all;
      },
    };
  }

  function termsOf({ expansion, names, sources }: RowLine): ReadonlyMap<string, Term> {
    const own = names.map((name, k): [string, Term] => [
      name,
      { source: sources[k]!, scale: expansion.first[k]! },
    ]);
    return resolved(new Map(own.filter(([, { scale }]) => scale !== 0)));
  }

  function resolved(terms: ReadonlyMap<string, Term>): ReadonlyMap<string, Term> {
    if (![...terms.keys()].some((name) => standIns.has(name))) return terms;
    const all = new Map<string, Term>();
    const add = (name: string, source: Source, scale: number): void => {
      all.set(name, { source: all.get(name)?.source ?? source, scale: (all.get(name)?.scale ?? 0) + scale });
    };
    for (const [name, { source, scale }] of terms) {
      const inner = standIns.get(name);
      if (!inner) add(name, source, scale);
      else {
        const line = one(inner);
        const slope = slopeOf(scale, line.variance);
        for (const [deep, term] of line.terms) add(deep, term.source, slope * term.scale);
      }
    }
    return all;
  }

  return { cell, one, termsOf };
}

/** Change of the figure for a change of the input, from that for one standard deviation of it. */
function slopeOf(scale: number, variance: number): number {
  return variance > 0 && Number.isFinite(variance) ? scale / Math.sqrt(variance) : 0;
}

function varianceOfTerms(terms: ReadonlyMap<string, Term>): number {
  let variance = 0;
  for (const { source, scale } of terms.values()) variance += (scale * scoreSd(source.shape)) ** 2;
  return variance;
}

function bendAt({ expansion: { square, pair }, names }: RowLine, w: (name: string) => number): number {
  const at = names.map(w);
  let bend = 0;
  for (let k = 0; k < at.length; k++) bend += square[k]! * at[k]! ** 2;
  for (let k = 0, p = 0; k < at.length && pair; k++) {
    for (let l = k + 1; l < at.length; l++, p++) bend += pair[p]! * at[k]! * at[l]!;
  }
  return bend;
}
