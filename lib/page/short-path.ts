// The same path in fewer letters: points that no eye misses left out, tenths of a pixel, steps instead of places.

interface Run {
  /** x, y, x, y, … in tenths of a pixel. */
  readonly at: readonly (readonly [number, number])[];
  readonly closed: boolean;
}

/** A point nearer than this to the line that would stand without it is left out, px. */
const UNSEEN = 0.12;
const STEP = /([MLHVZmlhvz])([^MLHVZmlhvz]*)/g;
const STRAIGHT = /^(?:[MLHVZmlhvz]|-?[\d.]+(?:e-?\d+)?|[\s,])*$/;
const NUMBER = /-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/g;

/**
 * Writes a path of straight pieces shorter; every drawn place stays within 0.2 px of where it was. A path with arcs
 * or bends is given back as it is.
 * @example shortPath("M0.04,0L10,0.01L20,0L20,5Z")  // "M0,0h20v5z"
 */
export function shortPath(path: string): string {
  if (!STRAIGHT.test(path)) return path;
  let pen: Places[number] | undefined;
  let text = "";
  for (const run of runsOf(path)) {
    text += written(run, pen);
    pen = run.closed ? run.at[0] : run.at.at(-1);
  }
  return text;
}

function runsOf(path: string): Run[] {
  const runs: { at: [number, number][]; closed: boolean }[] = [];
  let [x, y] = [0, 0];
  // Places after the first of an M are lines; a step after Z begins a run where the closed one began.
  const goTo = (px: number, py: number, begins: boolean): void => {
    [x, y] = [px, py];
    const last = runs.at(-1);
    if (begins || !last || last.closed) runs.push({ at: [[x, y]], closed: false });
    else last.at.push([x, y]);
  };
  for (const [, letter, rest] of path.matchAll(STEP)) {
    const numbers = rest!.match(NUMBER) ?? [];
    const command = letter!.toUpperCase();
    const relative = letter !== command;
    if (command === "Z") {
      const last = runs.at(-1);
      if (last) {
        last.closed = true;
        [x, y] = last.at[0]!;
      }
    } else if (command === "H") {
      for (const number of numbers) goTo(Number(number) + (relative ? x : 0), y, false);
    } else if (command === "V") {
      for (const number of numbers) goTo(x, Number(number) + (relative ? y : 0), false);
    } else {
      for (let i = 1; i < numbers.length; i += 2) {
        const [px, py] = [Number(numbers[i - 1]), Number(numbers[i])];
        goTo(px + (relative ? x : 0), py + (relative ? y : 0), command === "M" && i === 1);
      }
    }
  }
  return runs.map(({ at, closed }) => ({ at: rounded(closed ? thinnedRing(at) : thinned(at)), closed }));
}

type Places = readonly (readonly [number, number])[];

/** Without the points that lie on the line between those that stay (Ramer 1972, Douglas and Peucker 1973). */
function thinned(at: Places): Places {
  if (at.length < 3) return at;
  const [first, last] = [at[0]!, at.at(-1)!];
  const [far, distance] = furthest(at, first, last);
  if (distance <= UNSEEN) return [first, last];
  return [...thinned(at.slice(0, far + 1)).slice(0, -1), ...thinned(at.slice(far))];
}

/** A closed run is cut at its start and at the point furthest from it. */
function thinnedRing(at: Places): Places {
  if (at.length < 4) return at;
  const [far] = furthest(at, at[0]!, at[0]!);
  return [...thinned(at.slice(0, far + 1)).slice(0, -1), ...thinned([...at.slice(far), at[0]!]).slice(0, -1)];
}

function furthest(at: Places, [ax, ay]: Places[number], [bx, by]: Places[number]): [number, number] {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  let found: [number, number] = [0, -1];
  for (let i = 1; i < at.length - 1 || (length === 0 && i < at.length); i++) {
    const [x, y] = [at[i]![0] - ax, at[i]![1] - ay];
    const along = length === 0 ? 0 : Math.min(1, Math.max(0, (x * dx + y * dy) / length));
    const distance = Math.hypot(x - along * dx, y - along * dy);
    if (distance > found[1]) found = [i, distance];
  }
  return found;
}

function rounded(at: Places): Places {
  const tenths = at.map(([x, y]): [number, number] => [Math.round(x * 10), Math.round(y * 10)]);
  return tenths.filter(([x, y], i) => i === 0 || x !== tenths[i - 1]![0] || y !== tenths[i - 1]![1]);
}

/** A run from where the pen stands: its start as a place or as a step, whichever is shorter. */
function written({ at, closed }: Run, pen: Places[number] | undefined): string {
  const [x0, y0] = at[0]!;
  const place = `M${joined([x0, y0])}`;
  const move = pen ? `m${joined([x0 - pen[0], y0 - pen[1]])}` : place;
  let text = move.length < place.length ? move : place;
  let letter = "";
  at.slice(1).forEach(([x, y], i) => {
    const [dx, dy] = [x - at[i]![0], y - at[i]![1]];
    const [next, numbers] = dy === 0 ? ["h", [dx]] : dx === 0 ? ["v", [dy]] : ["l", [dx, dy]];
    const step = joined(numbers as number[]);
    text += next === letter && next === "l" ? (step.startsWith("-") ? step : ` ${step}`) : next + step;
    letter = next as string;
  });
  // A run of one place draws nothing but its round ends.
  return closed ? `${text}z` : at.length === 1 ? `${text}h0` : text;
}

function joined(tenths: readonly number[]): string {
  return tenths.map((each, i) => (i === 0 || each < 0 ? decimal(each) : `,${decimal(each)}`)).join("");
}

function decimal(tenths: number): string {
  const text = String(tenths / 10);
  if (text.startsWith("0.")) return text.slice(1);
  return text.startsWith("-0.") ? `-${text.slice(2)}` : text;
}

/** A coordinate of its own, to a tenth of a pixel. */
export function shortNumber(value: string): string {
  return /^-?[\d.]+$/.test(value) ? decimal(Math.round(Number(value) * 10)) : value;
}
