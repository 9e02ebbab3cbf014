// Outlines of marks about their middle, by the area that Vega gives them.

import { inPath } from "./plain-number.ts";

/** size: px², of the square about the mark. Undefined where the shape is none of these. */
export function shapePath(shape: string, size: number): string | undefined {
  const r = Math.sqrt(size) / 2;
  switch (shape) {
    case "circle": {
      const [out, back] = [inPath(r), inPath(-r)];
      return `M${out},0A${out},${out},0,1,1,${back},0A${out},${out},0,1,1,${out},0`;
    }
    case "square": {
      const side = Math.sqrt(size);
      const [from, along, back] = [inPath(-side / 2), inPath(side), inPath(-side)];
      return `M${from},${from}h${along}v${along}h${back}Z`;
    }
    case "diamond":
      return outline([-r, 0], [0, -r], [r, 0], [0, r]);
    case "triangle-up":
      return outline([0, -ROOT * r], [-r, ROOT * r], [r, ROOT * r]);
    case "triangle-down":
      return outline([0, ROOT * r], [-r, -ROOT * r], [r, -ROOT * r]);
    case "cross": {
      const s = r / 2.5;
      const quarter: At[] = [
        [-r, -s],
        [-r, s],
        [-s, s],
        [-s, r],
        [s, r],
        [s, s],
        [r, s],
        [r, -s],
        [s, -s],
        [s, -r],
        [-s, -r],
        [-s, -s],
      ];
      return outline(...quarter);
    }
    default:
      return undefined;
  }
}

type At = readonly [number, number];
/** Half of the square root of three: the height of a triangle of equal sides. */
const ROOT = Math.sqrt(3) / 2;

function outline(...at: readonly At[]): string {
  return `M${at.map(([x, y]) => `${inPath(x)},${inPath(y)}`).join("L")}Z`;
}
