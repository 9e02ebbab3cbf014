// The continued fraction of the incomplete beta function.

/**
 * a·B(a, b)·I(x; a, b) / (xᵃ(1 − x)ᵇ): the continued fraction 1/(1 + d₁/(1 + d₂/(1 + …))) with
 * d₂ₘ = m(b − m)x/((a + 2m − 1)(a + 2m)) and d₂ₘ₊₁ = −(a + m)(a + b + m)x/((a + 2m)(a + 2m + 1)).
 * a, b above 0; x from 0 to (a + 1)/(a + b + 2), where it converges fast; beyond that it takes long and loses digits.
 * Source: NIST Digital Library of Mathematical Functions 8.17.22, evaluated forwards by Lentz's method as modified by
 * I. J. Thompson and A. R. Barnett, J. Comput. Phys. 64 (1986) 490–509.
 * @example betaShare(0.25, 1, 1) // 1.3333..., for I(x; 1, 1) = x
 */
export function betaShare(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let fraction = d;
  for (let m = 1; m < 20_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || tiny);
    c = 1 + even / c || tiny;
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || tiny);
    c = 1 + odd / c || tiny;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 2e-16) break;
  }
  return fraction;
}
