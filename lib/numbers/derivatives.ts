// Derivatives of a model by its parameters, by differences.

/** Share of a parameter that a step takes: smaller lets rounding in, larger the bend of the model (tried on NIST StRD). */
const stepShare = 2 ** -12;

/**
 * ∂f/∂pⱼ at p, a column for each parameter: (f₋₂ − 8f₋₁ + 8f₁ − f₂)/(12h), h = |pⱼ|/4096 (1/4096 where pⱼ is 0).
 * Relative error near 1e-12 where f bends on the scale of pⱼ itself. values: f at all points for given parameters.
 * Source: M. Abramowitz and I. A. Stegun (1964) 25.3.6 (from memory).
 * @example derivativesByParameter(([a]) => [a! * a!], [3]) // about [[6]]
 */
export function derivativesByParameter(
  values: (parameters: readonly number[]) => ArrayLike<number>,
  parameters: readonly number[],
): Float64Array[] {
  return parameters.map((p, j) => {
    const step = (Math.abs(p) || 1) * stepShare;
    const at = (count: number): ArrayLike<number> => values(parameters.with(j, p + count * step));
    const [far2, far1, near1, near2] = [at(-2), at(-1), at(1), at(2)];
    return Float64Array.from(far2, (v, i) => (v - 8 * far1[i]! + 8 * near1[i]! - near2[i]!) / (12 * step));
  });
}
