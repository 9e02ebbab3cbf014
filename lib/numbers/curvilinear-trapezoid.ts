// A rectangle whose half-width is itself known only within a share: JCGM 101:2008, 6.4.3.

/**
 * The x below which a share p lies of the curvilinear trapezoid with middle 0 and half-width uniform within 1 ± edge:
 * X = W·U, W uniform in [1 − d, 1 + d], U uniform in [−1, 1]. Its density is atanh(d)/(2d) for |x| ≤ 1 − d
 * and ln((1 + d)/|x|)/(4d) beyond, up to 1 + d; integrated, with u = (1 + d)/x − 1, the share above x ≥ 1 − d is
 * x·(u − ln(1 + u))/(4d).
 * p from 0 to 1 and edge from 0 to below 1, else NaN.
 * Source: JCGM 101:2008 6.4.3, limits of uncertain width with the middle known; integrated here.
 * Error below 1e-13. Newton's steps inside a bracket; exactly antisymmetric about p = 0.5.
 * @example curvilinearTrapezoidQuantile(1, 0.2) // 1.2
 */
export function curvilinearTrapezoidQuantile(p: number, edge: number): number {
  if (!(edge >= 0 && edge < 1 && p >= 0 && p <= 1)) return Number.NaN;
  return p < 0.5 ? -upperQuantile(p, edge) : upperQuantile(1 - p, edge);
}

function heightOfTop(edge: number): number {
  return edge === 0 ? 0.5 : Math.atanh(edge) / (2 * edge);
}

/** Share above x, x ≥ 0. */
function shareAbove(x: number, edge: number): number {
  if (x >= 1 + edge) return 0;
  if (x <= 1 - edge) return 0.5 - x * heightOfTop(edge);
  return (x * excessOverLog((1 + edge - x) / x)) / (4 * edge);
}

/** u − ln(1 + u) without losing the digits of a small u. */
function excessOverLog(u: number): number {
  if (u > 0.05) return u - Math.log1p(u);
  let total = 0;
  for (let n = 14; n >= 2; n--) total = (n % 2 === 0 ? 1 : -1) / n + u * total;
  return u * u * total;
}

/** x ≥ 0 above which the share lies. */
function upperQuantile(share: number, edge: number): number {
  const atBend = shareAbove(1 - edge, edge);
  if (share >= atBend) return (0.5 - share) / heightOfTop(edge);
  let low = 1 - edge;
  let high = 1 + edge;
  // Near its end the share falls as the square of the distance.
  let x = high - 2 * edge * Math.sqrt(share / atBend);
  for (let round = 0; round < 100; round++) {
    const miss = shareAbove(x, edge) - share;
    if (miss === 0) break;
    if (miss > 0) low = x;
    else high = x;
    const density = Math.log((1 + edge) / x) / (4 * edge);
    const step = x + miss / density;
    const next = step > low && step < high ? step : low + (high - low) / 2;
    if (Math.abs(next - x) <= 1e-16 * x) break;
    x = next;
  }
  return x;
}
