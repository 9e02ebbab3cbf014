// A coordinate as the drawings write it.

/** To 0.01 px. */
export function coordinate(value: number): string {
  const text = String(value);
  if (!text.includes(".")) return text;
  const rounded = Number(value.toFixed(2));
  return rounded === 0 ? "0" : String(rounded);
}

export function translated(x: number, y: number): string {
  return `translate(${coordinate(x)},${coordinate(y)})`;
}

/** In the path of a line, an area or a mark: d3 writes a thousandth there, before it is rounded once more. */
export function inPath(value: number): string {
  return coordinate(Math.round(value * 1_000) / 1_000);
}
