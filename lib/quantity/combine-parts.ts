// Several figures that come out of one call: the call is made once for each draw, not once for each figure.

import { combine, type Inputs, lift, type Values } from "./combine.ts";
import { drawing, drawsOf } from "./drawing.ts";
import type { Figure } from "./figure.ts";

/**
 * For each part the figure that combine gives of fn's part, the same in every digit.
 * fn: as for combine, with a number for each part. as: as of combine; the parts' names are added to it.
 * @example combineParts(({ x }) => ({ twice: 2 * x, half: x / 2 }), { x: 4 }, ["twice", "half"], "example").half.value // 2
 */
export function combineParts<const Given extends Inputs, const Part extends string>(
  fn: (values: Values<Given>) => { readonly [part in Part]: number },
  inputs: Given,
  parts: readonly Part[],
  as: string,
): { readonly [part in Part]: Figure } {
  let columns: readonly Float64Array[] | undefined;
  const drawn = (part: number): Float64Array => {
    columns ??= columnsOf(fn, inputs, parts);
    // A figure reorders its draws.
    return columns[part]!.slice();
  };
  const figures = parts.map((part, k) => [
    part,
    combine((values: Values<Given>) => fn(values)[part], inputs, {
      as: `${as}, ${part}`,
      drawn: () => drawn(k),
    }),
  ]);
  return Object.fromEntries(figures) as { readonly [part in Part]: Figure };
}

/** All usual draws of each part: those that drawsOf gives of the part alone. */
function columnsOf<Given extends Inputs, Part extends string>(
  fn: (values: Values<Given>) => { readonly [part in Part]: number },
  inputs: Given,
  parts: readonly Part[],
): readonly Float64Array[] {
  let columns: readonly Float64Array[] = [];
  let at = 0;
  const every = lift((values: Values<Given>) => {
    const made = fn(values);
    for (let k = 0; k < columns.length; k++) columns[k]![at] = made[parts[k]!];
    at++;
    return 0;
  }, inputs);
  const plan = drawing(every.sources);
  columns = parts.map(() => new Float64Array(plan.count));
  // The middle was worked out when it was lifted; draws come in order.
  at = 0;
  drawsOf(every, plan);
  return columns;
}
