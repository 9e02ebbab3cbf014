// Labels of cloth by count: "40 mesh, 0.25 mm wire", "40 x 42 mesh, 0.25/0.22 mm wire".

import type { Checked } from "../issue.ts";
import { type ClothWay, clothOpenAreaPercent, clothOpeningMm, clothSieve } from "./cloth.ts";
import type { Sieve } from "./sieve.ts";
import { meshWithoutWire, oddWire, wiresOverlap } from "./sieve-label-issues.ts";
import { plainDigits } from "./sieve-table.ts";
import { astmSieves } from "./sieve-table-astm.ts";

const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
const unit = "(mm|µm|um|in)";
const within = String.raw`(?: ?(?:±|\+/-|\+-) ?${number})?`;
const size = `${number}(?: ?/ ?${number})?${within} ?${unit}`;
const pattern = new RegExp(
  `^${number}(?: ?[x×] ?${number})? ?mesh(?: ?[,;]? ?(?:${size} wire|wire ${size}))?$`,
);

const mmPer: Readonly<Record<string, number>> = { mm: 1, µm: 0.001, um: 0.001, in: 25.4 };
const digits = (mm: number) => Number(mm.toPrecision(9));

/** Undefined where the label is not of this kind. Text: lower case, single spaces; label: as typed. */
export function readClothLabel(text: string, label: string): Checked<Sieve> | undefined {
  const found = pattern.exec(text);
  if (!found) return undefined;
  const [, warpCount, weftCount] = found;
  const [warpWire, weftWire, plusMinus, wireUnit] = found[3] === undefined ? found.slice(7) : found.slice(3);
  const count = Number(warpCount);
  if (!(count > 0) || (weftCount !== undefined && !(Number(weftCount) > 0))) return undefined;
  if (warpWire === undefined || wireUnit === undefined) return { issues: [aloneIssue(label, count)] };
  const mm = (typed: string) => digits(Number(typed) * mmPer[wireUnit]!);
  const way = (n: string | undefined, wire: string): ClothWay => ({
    countPerInch: Number(n),
    wireMm: mm(wire),
    ...(plusMinus === undefined ? {} : { wirePlusMinusMm: mm(plusMinus) }),
  });
  return fromWays(way(warpCount, warpWire), way(weftCount ?? warpCount, weftWire ?? warpWire), label);
}

function fromWays(warp: ClothWay, weft: ClothWay, label: string): Checked<Sieve> | undefined {
  const ways = [warp, weft];
  if (ways.some(({ wireMm }) => !(wireMm > 0))) return undefined;
  const overlapping = ways.find((way) => clothOpeningMm(way) <= 1e-9);
  if (overlapping) return { issues: [wiresOverlap(label, (25.4 / overlapping.countPerInch).toPrecision(3))] };
  const value = clothSieve(warp, weft)!;
  // The test sieves of ASTM E11 are 25 to 57 % open, and woven cloth for other uses 15 to 70 %: our own limits.
  const odd = ways.map(clothOpenAreaPercent).find((percent) => percent < 15 || percent > 70);
  return { value, issues: odd === undefined ? [] : [oddWire(label, odd.toFixed(0))] };
}

/** Three wires that cloth of such a count is woven from; at 60 mesh they are 0.12, 0.16 and 0.19 mm. */
const wiresOfPitch = [0.12, 0.16, 0.19].map((wireMm) => (wireMm * 60) / 25.4);

function aloneIssue(label: string, countPerInch: number) {
  const each = wiresOfPitch.map((share) => {
    const wireMm = Number(((share * 25.4) / countPerInch).toPrecision(2));
    return { wireMm, openingMm: clothOpeningMm({ countPerInch, wireMm }) };
  });
  const openings = each.map(({ openingMm }) => openingMm);
  return meshWithoutWire(
    label,
    each
      .map(({ wireMm, openingMm }) => `${openingMm.toPrecision(3)} mm with ${plainDigits(wireMm)} mm wire`)
      .join(", "),
    `${label}, ${plainDigits(standardWireMm(countPerInch))} mm wire`,
    openingLabel(Math.min(...openings), Math.max(...openings)),
  );
}

/** Wire of the test sieve whose count is nearest; beyond the table's ends as much finer or coarser as the count is. */
function standardWireMm(countPerInch: number): number {
  const counted = astmSieves.map(({ openingMm, wireMm }) => ({ wireMm, count: 25.4 / (openingMm + wireMm) }));
  const away = ({ count }: { count: number }) => Math.abs(Math.log(count / countPerInch));
  const nearest = counted.reduce((best, one) => (away(one) < away(best) ? one : best));
  const inTable = countPerInch >= counted[0]!.count && countPerInch <= counted.at(-1)!.count;
  return inTable ? nearest.wireMm : Number(((nearest.wireMm * nearest.count) / countPerInch).toPrecision(2));
}

/** "0.081 ± 0.012 mm": holds both ends; undefined where no sieve is so fine or so coarse. */
function openingLabel(lowMm: number, highMm: number): string | undefined {
  if (lowMm < 0.02 || highMm > 125) return undefined;
  const middle = Number(((lowMm + highMm) / 2).toPrecision(2));
  const reach = Math.max(highMm - middle, middle - lowMm);
  const step = 10 ** (Math.floor(Math.log10(reach)) - 1);
  return `${plainDigits(middle)} ± ${plainDigits(Math.ceil(reach / step - 1e-6) * step)} mm`;
}
