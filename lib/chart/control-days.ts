// Places and words on an axis of days.

export interface DayTick {
  readonly day: number;
  readonly text: string;
  /** Under the first tick, and under the first of each year. */
  readonly year?: string;
}

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const tickPx = 46;
/** Shorter than this, days are counted out; longer, months. */
const shortDays = 100;

export function dayTicks([from, to]: readonly [number, number], widthPx: number): DayTick[] {
  const many = Math.max(2, Math.floor(widthPx / tickPx));
  const days = to - from <= shortDays ? everyDays(from, to, many) : firstOfMonths(from, to, many);
  let last: string | undefined;
  return days.map((day) => {
    const date = new Date(day * 86_400_000);
    const month = months[date.getUTCMonth()]!;
    const year = String(date.getUTCFullYear());
    const text = to - from <= shortDays ? `${date.getUTCDate()} ${month}` : month;
    const tick = { day, text, ...(year === last ? {} : { year }) };
    last = year;
    return tick;
  });
}

function everyDays(from: number, to: number, many: number): number[] {
  const step = [1, 2, 7, 14, 28, 56].find((each) => (to - from) / each <= many) ?? 56;
  const first = Math.ceil(from);
  return Array.from({ length: Math.floor((to - first) / step) + 1 }, (_, i) => first + i * step);
}

function firstOfMonths(from: number, to: number, many: number): number[] {
  const start = new Date(from * 86_400_000);
  const count = (to - from) / 30.44;
  const step = [1, 2, 3, 6, 12, 24, 60, 120].find((each) => count / each <= many) ?? 240;
  const found: number[] = [];
  const first = start.getUTCFullYear() * 12 + start.getUTCMonth();
  for (let month = Math.ceil(first / step) * step; ; month += step) {
    const day = Date.UTC(Math.floor(month / 12), month % 12, 1) / 86_400_000;
    if (day > to) return found;
    if (day >= from) found.push(day);
  }
}
