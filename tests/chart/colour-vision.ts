// Colours as readers see them: all cones, red-blind, green-blind, blue-blind; and how far two of them lie apart.

export type Triple = readonly [number, number, number];
const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
/** Linear sRGB, 0 to 1 (IEC 61966-2-1). */
export const rgb = (hex: string): Triple => {
  const part = (i: number) => linear(Number.parseInt(hex.slice(i, i + 2), 16) / 255);
  return [part(1), part(3), part(5)];
};
const times = (m: readonly Triple[], v: Triple): Triple => {
  const row = (i: number) => m[i]![0] * v[0] + m[i]![1] * v[1] + m[i]![2] * v[2];
  return [row(0), row(1), row(2)];
};

// Viénot, Brettel & Mollon 1999, "Digital video colourmaps for checking the legibility of displays by dichromats",
// Color Research and Application 24: RGB to cone responses, and the plane that is left (figures from memory).
const toCones: readonly Triple[] = [
  [17.8824, 43.5161, 4.11935],
  [3.45565, 27.1554, 3.86714],
  [0.0299566, 0.184309, 1.46709],
];
function inverse([[a, b, c], [d, e, f], [g, h, i]]: readonly [Triple, Triple, Triple]): readonly Triple[] {
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const rows: Triple[] = [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ];
  return rows.map((row): Triple => [row[0] / det, row[1] / det, row[2] / det]);
}
const fromCones = inverse(toCones as [Triple, Triple, Triple]);

// Machado, Oliveira & Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency", IEEE
// Transactions on Visualization and Computer Graphics 15 (6), severity 1, on linear RGB (as public software has them).
const machado: Record<string, readonly Triple[]> = {
  "red-blind (2009)": [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  "green-blind (2009)": [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  "blue-blind (2009)": [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

export const readers: Record<string, (v: Triple) => Triple> = {
  "all cones": (v) => v,
  "red-blind": (v) => {
    const [, m, s] = times(toCones, v);
    return times(fromCones, [2.02344 * m - 2.52581 * s, m, s]);
  },
  "green-blind": (v) => {
    const [l, , s] = times(toCones, v);
    return times(fromCones, [l, 0.494207 * l + 1.24827 * s, s]);
  },
  ...Object.fromEntries(
    Object.entries(machado).map(([who, matrix]) => [who, (v: Triple) => times(matrix, v)]),
  ),
};

/** CIE 1976 L*a*b* of linear sRGB (IEC 61966-2-1 matrix, white D65). */
export function lab(colour: Triple): Triple {
  const held = (c: number) => Math.min(1, Math.max(0, c));
  const [r, g, b] = [held(colour[0]), held(colour[1]), held(colour[2])];
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** The difference of two colours of linear sRGB for one reader, CIE 1976. */
export function differ(a: Triple, b: Triple, seen: (v: Triple) => Triple): number {
  const [p, q] = [lab(seen(a)), lab(seen(b))];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}
export const apart = (a: string, b: string, seen: (v: Triple) => Triple): number =>
  differ(rgb(a), rgb(b), seen);

/** A colour laid over another with an opacity, as browsers do it: on the encoded values. */
export function over(top: string, opacity: number, ground: string): string {
  const part = (i: number) => {
    const [a, b] = [top, ground].map((hex) => Number.parseInt(hex.slice(i, i + 2), 16));
    return Math.round(a! * opacity + b! * (1 - opacity))
      .toString(16)
      .padStart(2, "0");
  };
  return `#${part(1)}${part(3)}${part(5)}`;
}
