// Reads places back from a drawing's own tick labels, for the tests.

import { expect } from "vitest";
import { chartSvg } from "../../lib/chart/svg.ts";
import { type ReadSvg, readSvg } from "./read-svg.ts";
import { trialSamples } from "./trial-samples.ts";

export const svgOf = async (chart: { spec(width: number): object }, width = 720) =>
  readSvg(await chartSvg(chart.spec(width) as never));
export const sample = (name: string) => trialSamples.find((chart) => chart.name === name)!;
export const box = (path: { x: number; y: number }[]) => ({
  left: Math.min(...path.map(({ x }) => x)),
  right: Math.max(...path.map(({ x }) => x)),
  top: Math.min(...path.map(({ y }) => y)),
  bottom: Math.max(...path.map(({ y }) => y)),
});
/** A value's place, from the labels of two ticks of the level axis. */
export function levelAxis(svg: ReadSvg, a: string, b: string): (value: number) => number {
  const at = (text: string) => svg.words.find((word) => word.text === text && word.anchor === "middle")!.x;
  return (value) => at(a) + ((value - Number(a)) / (Number(b) - Number(a))) * (at(b) - at(a));
}
/** The same for an upright axis, whose labels end at the axis; a label stands a third of its size under its tick. */
export function uprightAxis(svg: ReadSvg, a: string, b: string, from = 0): (value: number) => number {
  const at = (text: string) => {
    const found = svg.words.filter(
      (word) => word.text === text && word.anchor === "end" && word.y > from,
    )[0]!;
    return found.y - found.sizePx * 0.3;
  };
  return (value) => at(a) + ((value - Number(a)) / (Number(b) - Number(a))) * (at(b) - at(a));
}
export const near = (found: number, wanted: number) => expect(Math.abs(found - wanted)).toBeLessThan(1);
