// Courses are cut where they leave the plot, not bent along its edge, and broken where there is no figure.

import type { At } from "./pixel-layers.ts";

/** Places between a and b, as shares of the way, where a value that runs from one figure to another crosses the limits. */
function crossings(from: number, to: number, limits: readonly number[]): number[] {
  return limits.map((limit) => (limit - from) / (to - from)).filter((share) => share > 0 && share < 1);
}

function between(a: number, b: number, share: number): number {
  return a + (b - a) * share;
}

/** The stretches between places without a figure: what is not known is not bridged. */
export function stretches<T>(at: readonly T[], known: (one: T) => boolean): T[][] {
  const runs: T[][] = [[]];
  for (const one of at) {
    if (known(one)) runs.at(-1)!.push(one);
    else if (runs.at(-1)!.length > 0) runs.push([]);
  }
  return runs.filter((run) => run.length > 0);
}

/** The fill between two lines, cut at top and bottom. */
export function clippedFill<T extends At & { readonly py2: number }>(
  at: readonly T[],
  top: number,
  bottom: number,
): { px: number; py: number; py2: number }[] {
  const inside = (py: number) => Math.min(bottom, Math.max(top, py));
  const all = at.flatMap((to, i) => {
    const from = at[i - 1];
    const cuts = from
      ? [...crossings(from.py, to.py, [top, bottom]), ...crossings(from.py2, to.py2, [top, bottom])]
      : [];
    const added = cuts
      .sort((a, b) => a - b)
      .map((share) => ({
        px: between(from!.px, to.px, share),
        py: between(from!.py, to.py, share),
        py2: between(from!.py2, to.py2, share),
      }));
    return [...added, { px: to.px, py: to.py, py2: to.py2 }];
  });
  return all.map(({ px, py, py2 }) => ({ px, py: inside(py), py2: inside(py2) }));
}
