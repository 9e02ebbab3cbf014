// What an aim over fitted curves hangs on, as a text, so that it may be kept from run to run.

import { contentOf } from "../quantity/content.ts";
import { kept } from "../quantity/kept.ts";
import type { AimedCurve } from "./best-place.ts";

/** Undefined where a part cannot be told. */
function contentOfAimed(curves: readonly AimedCurve[]): string | undefined {
  return contentOf(
    curves.map(({ name, low, high, bias, curve }) => {
      const { form, from, to, used, blocks, blockScatter, fit } = curve;
      const scatter = blockScatter?.variance;
      if (!fit) return { name, form };
      const { coefficients, covariance, residualSd, degreesOfFreedom, residuals } = fit;
      const fitted = { coefficients, covariance, residualSd, degreesOfFreedom, residuals };
      return { name, low, high, bias, form, from, to, used, blocks, scatter, fitted };
    }),
  );
}

/**
 * make, whose answers are kept by all that the curves and the other arguments are. size: of an answer, in characters of
 * two bytes. Curves are told by their fits; what is made of them must hang on nothing else.
 */
export function keptByCurves<Made extends object>(
  size: number,
): (curves: readonly AimedCurve[], also: readonly (number | undefined)[], make: () => Made) => Made {
  const store = kept<Made>(100 * (size + 4000), () => size);
  return (curves, also, make) => {
    const content = contentOfAimed(curves);
    if (content === undefined) return make();
    const key = `${also.join()} ${content}`;
    const before = store.get(key);
    if (before) return before;
    const made = make();
    store.set(key, made);
    return made;
  };
}
