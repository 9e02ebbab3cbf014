// Round numbers for an arithmetic axis.

/** Steps of 1, 2 or 5 times a power of ten: about as many as asked for, and the domain widened to whole steps if wished. */
export function niceTicks(low: number, high: number, about: number): readonly number[] {
  const span = high > low ? high - low : Math.max(Math.abs(low), 1);
  const raw = span / Math.max(1, about);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((each) => each * power >= raw) ?? 10) * power;
  const found: number[] = [];
  for (let i = Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i += 1)
    found.push(Number((i * step).toPrecision(12)));
  return found;
}

/** From zero to the first round number at or above the highest value; 0 to 1 when there is none above zero. */
export function fromZero(
  highest: number,
  about: number,
): { domain: [number, number]; ticks: readonly number[] } {
  if (!(highest > 0)) return { domain: [0, 1], ticks: [0, 1] };
  const rough = niceTicks(0, highest, about);
  const step = (rough[1] ?? highest) - (rough[0] ?? 0);
  const top = Math.ceil(highest / step - 1e-9) * step;
  return { domain: [0, Number(top.toPrecision(12))], ticks: niceTicks(0, top, about) };
}
