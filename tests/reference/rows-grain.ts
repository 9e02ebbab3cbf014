// Grain statistics, surface and angularity against textbooks, lab manuals and soil reports.

import { angularityClass } from "../../lib/sand/angularity.ts";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { folkWard, sortingClass } from "../../lib/sand/folk-ward.ts";
import {
  coefficientOfCurvature,
  coefficientOfUniformity,
  gradingStatistics,
} from "../../lib/sand/grain-statistics.ts";
import { massBalance } from "../../lib/sand/mass-balance.ts";
import { classMeanMm } from "../../lib/sand/mean-size.ts";
import { phiMoments } from "../../lib/sand/moments.ts";
import { phiPercentiles } from "../../lib/sand/percentiles.ts";
import { sphereSurfaceCm2G } from "../../lib/sand/specific-surface.ts";
import { theoreticalSurface, theoreticalSurfaceCm2G } from "../../lib/sand/surface.ts";
import { KOREAN_PAGE, NATURAL_BONDED } from "../sand/curve-sands.ts";
import { das, eocene, folk } from "./grain-sands.ts";
import type { Published } from "./published.ts";

const means = ["geometric", "arithmetic", "log-mean"] as const;
const limits = [3.35, 1.7, 0.85, 0.6, 0.425, 0.3, 0.212, 0.15, 0.106, 0.075, 0.053];
/** A normal curve's deviates at 5, 16 and 25 % in the tail: Abramowitz & Stegun, table 26.5. */
const normal = {
  phi5: -1.64485,
  phi16: -0.99446,
  phi25: -0.67449,
  phi50: 0,
  phi75: 0.67449,
  phi84: 0.99446,
  phi95: 1.64485,
};

export const grainRows: readonly Published[] = [
  {
    figure: "moments of a sand with divisor N: mean, deviation, φ",
    source: "folk",
    theirs: ["2.68", "1.06"],
    ours: () => {
      const { meanPhi, sortingPhi } = phiMoments(folk, { panMidPhi: 5 });
      return [meanPhi!, sortingPhi!];
    },
    tag: "read",
  },
  {
    figure: "its skewness and kurtosis",
    source: "folk",
    theirs: ["0.064", "3.209"],
    ours: () => {
      const { skewness, kurtosis } = phiMoments(folk, { panMidPhi: 5 });
      return [skewness!, kurtosis!];
    },
    tag: "by hand",
    note: "masses read; not printed there",
  },
  {
    figure: "divisor of graphic sorting: 6 makes a normal curve's deviation more than 1",
    source: ["folk and ward", "one journal"],
    theirs: ["1.045"],
    ours: () => [folkWard(normal).sortingPhi!],
    agree: { instead: ["0.996"] },
    tag: "misprint",
    note: "one journal's table prints 6 for 6.6; both figures by hand from tabled deviates",
  },
  {
    figure: "limit of moderately well sorted, φ 0.705",
    source: ["folk", "university page"],
    theirs: ["moderately well sorted", "moderately sorted"],
    ours: () => [sortingClass(0.705), sortingClass(0.705, 0.7)],
    tag: "read",
    note: "0.71 and 0.70: the sources disagree, the second by choice",
  },
  {
    figure: "cumulative percentages of a sieving; its recovery, %",
    source: "anderson",
    theirs: ["8.83", "23.64", "63.61", "92.19", "98.56", "99.94", "99.70"],
    ours: () => {
      const balance = massBalance({ startG: 33.52, retainedG: eocene.fractions.map(({ mass }) => mass) });
      return [...gradingCurve(eocene).points.map((at) => at.coarserPercent), 100 - balance.lossPercent];
    },
    agree: { within: 0.0055 },
    tag: "read",
    note: "the third, 63.615, is cut off there",
  },
  {
    figure: "graphic measures of that sieving with φ5 extended",
    source: "anderson",
    theirs: ["0.619", "1.118", "−0.046", "1.111"],
    ours: () => {
      const found = folkWard(phiPercentiles(gradingCurve(eocene), { extendEnds: true }));
      return [found.meanPhi!, found.sortingPhi!, found.skewness!, found.kurtosis!];
    },
    tag: "by hand",
    note: "data read; the source's own measures cut off",
  },
  {
    figure: "percent finer of a problem of Das",
    source: "das",
    theirs: ["100", "95.20", "84.20", "61.40", "41.60", "20.36", "6.93"],
    ours: () => gradingCurve(das).points.map((at) => at.passingPercent),
    agree: { within: 0.0051 },
    tag: "read",
  },
  {
    figure: "its D60, mm: the sheet reads straight over d, we over ln d",
    source: "das",
    theirs: ["0.4079798"],
    ours: () => [gradingStatistics(das, { panMidPhi: 4.5 }).d60Mm!],
    agree: { share: 0.01 },
    tag: "read",
  },
  {
    figure: "its Cu, from 0.09 and 0.41 mm",
    source: "das",
    theirs: ["4.56"],
    ours: () => [coefficientOfUniformity(0.09, 0.41)!],
    tag: "read",
  },
  {
    figure: "its Cc, from 0.09, 0.19 and 0.41 mm",
    source: "das",
    theirs: ["1.08"],
    ours: () => [coefficientOfCurvature(0.09, 0.19, 0.41)!],
    agree: { instead: ["0.98"] },
    tag: "misprint",
    note: "1.08 needs 0.20 for D30",
  },
  {
    figure: "Cu and Cc of a soil report",
    source: "soil report",
    theirs: ["6.22", "2.01"],
    ours: () => [coefficientOfUniformity(0.082, 0.51)!, coefficientOfCurvature(0.082, 0.29, 0.51)!],
    tag: "read",
  },
  {
    figure: "surface of spheres by class, log-mean size, 11 classes, cm²/g",
    theirs: ["4.7", "9.3", "18.5", "31.5", "44.6", "63.1", "89.3", "126.3", "178.7", "252.7", "357.3"],
    ours: () => limits.map((low, k) => sphereSurfaceCm2G(classMeanMm(low, limits[k - 1] ?? 6.7, "log-mean"))),
    tag: "by hand",
  },
  {
    figure: "surface of the Korean sand by three mean sizes, cm²/g",
    source: "korean page",
    theirs: ["125.45", "123.3", "124.7"],
    ours: () => means.map((mean) => theoreticalSurfaceCm2G({ retained: KOREAN_PAGE, mean })!),
    agree: { within: 0.06 },
    tag: "by hand",
    note: "masses read; by rounded factors",
  },
  {
    figure: "Sauter size of the Korean sand and of the natural bonded sand, µm",
    source: ["korean page", "american handbooks"],
    theirs: ["180", "65.8"],
    ours: () =>
      [KOREAN_PAGE, NATURAL_BONDED].map((retained) => theoreticalSurface({ retained }).sauterMm! * 1000),
    tag: "by hand",
    note: "the second sand from memory",
  },
  {
    figure: "surface of the natural bonded sand, cm²/g, and the pan's share of it, %",
    source: "american handbooks",
    theirs: ["343.9", "43"],
    ours: () => {
      const { cm2G, panSharePercent } = theoreticalSurface({ retained: NATURAL_BONDED });
      return [cm2G!, panSharePercent];
    },
    tag: "by hand",
    note: "masses from memory",
  },
  {
    figure: "classes of angularity, at 1.0, 1.2, 1.5, 1.8",
    source: "giesserei lexikon",
    theirs: ["round", "rounded edges", "angular", "splintery"],
    ours: () => [1, 1.2, 1.5, 1.8].map(angularityClass),
    tag: "read",
    note: "limits 1.0, 1.1, 1.3, 1.7 read; 1.0 to 1.1 called round by us",
  },
];
