// The fineness number with its ±, against numpy's plain draws.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { combine, finenessFigure, readLog, sievedPortion, spread } from "../../lib/index.ts";
import { quantilesInPlace } from "../../lib/numbers/quantile.ts";
import { openNumpy } from "./numpy.ts";
import { type Row, skipped } from "./row.ts";
import type { Target } from "./targets.ts";
import { interleaved, processorMs } from "./timing.ts";

/** Invented: grams on the eleven sieves and in the pan. */
const grams = [0.2, 0.4, 0.9, 1.6, 3.1, 8.2, 13.5, 12.1, 6.4, 2.3, 0.9, 0.4];
const multipliers = [3, 5, 10, 20, 30, 40, 50, 70, 100, 140, 200, 300];
const sdG = 0.05;

const list = grams.map((mean, k) => spread({ mean, sd: sdG, source: `weighing ${k}` }));
const names = ["a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "pan"] as const;
type Name = (typeof names)[number];
const named = Object.fromEntries(names.map((name, k) => [name, list[k]!])) as {
  readonly [name in Name]: (typeof list)[number];
};

function byList(values: ArrayLike<number>): number {
  let products = 0;
  let total = 0;
  for (let k = 0; k < 12; k++) {
    products += values[k]! * multipliers[k]!;
    total += values[k]!;
  }
  return products / total;
}

/** As a founder's script would write it. */
function byName({ a, b, c, d, e, f, g, h, i, j, k, pan }: { readonly [name in Name]: number }): number {
  const coarse = 3 * a + 5 * b + 10 * c + 20 * d + 30 * e + 40 * f;
  const fine = 50 * g + 70 * h + 100 * i + 140 * j + 200 * k + 300 * pan;
  return (coarse + fine) / (a + b + c + d + e + f + g + h + i + j + k + pan);
}

const listed = (draws: number) => combine(byList, list, { draws });
const byNames = (draws: number) => combine(byName, named, { draws });

/** A log's first sand as a whole budget; draws nothing until it is read. */
function budget(file: string) {
  const path = join(import.meta.dirname, "../../data-demo/grain-fineness", file);
  const { value } = readLog(readFileSync(path, "utf8"), { name: file });
  const [sand] = value!.sands;
  const portions = sand!.sievings.map(sievedPortion);
  return () => finenessFigure({ name: sand!.name, portions }).figure;
}

/** Two limits of draws by selection, against a typed array's own sort. */
async function limitRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const count of [4096, 65_536]) {
    const draws = Float64Array.from(
      { length: count },
      (_, i) => Math.sin(i * 12.9898) * 43_758.5453 * (i % 7),
    );
    const work = new Float64Array(count);
    const time = (act: () => unknown) => () => {
      work.set(draws);
      return processorMs(act);
    };
    const { selecting, sorting } = await interleaved(
      { selecting: time(() => quantilesInPlace(work, [0.025, 0.975])), sorting: time(() => work.sort()) },
      { rounds: 60, warm: 20 },
    );
    rows.push({
      work: `two limits of ${count.toLocaleString("en")} draws`,
      measured: `${selecting.toFixed(2)} ms`,
      against: `sort: ${sorting.toFixed(2)} ms`,
      figure: selecting / sorting,
      target: { most: 0.5, unit: "×" },
    });
  }
  return rows;
}

export async function finenessRows(): Promise<Row[]> {
  return [...(await againstNumpy()), ...(await limitRows())];
}

async function againstNumpy(): Promise<Row[]> {
  const numpy = await openNumpy(grams, sdG);
  const oneSieving = budget("five-sieves.yaml");
  const twoSplits = budget("full-stack.yaml");
  const time = (work: () => unknown) => () => processorMs(work);
  const limits = ({ mean, sd, low, high }: ReturnType<typeof listed>) => mean + sd + low + high;
  const measures = {
    "4,096 draws, inputs in a list": time(() => limits(listed(4096))),
    "4,096 draws, inputs by name": time(() => limits(byNames(4096))),
    "65,536 draws, inputs in a list": time(() => limits(listed(65_536))),
    "65,536 draws, inputs by name": time(() => limits(byNames(65_536))),
    "whole budget with its shares: five sieves, one sieving": time(() => shared(oneSieving())),
    "whole budget with its shares: full stack, two splits": time(() => shared(twoSplits())),
  };
  const shared = (figure: ReturnType<typeof oneSieving>) => figure.mean + figure.shares.length;
  try {
    const all = await interleaved(
      { ...measures, numpy: () => numpy?.milliseconds() ?? 0 },
      { rounds: 60, warm: 20 },
    );
    const peer = numpy ? `numpy ${numpy.version}, 1e5 draws: ${all.numpy.toFixed(1)} ms` : "";
    const rows = Object.keys(measures).map((name): Row => {
      const ms = all[name as keyof typeof measures];
      const most = name.startsWith("65,536") ? 1 : 0.1;
      const work = name.startsWith("whole")
        ? `fineness, ${name}`
        : `fineness with its ±, 11 sieves and pan, ${name}`;
      const row = { work, measured: `${ms.toFixed(2)} ms`, against: peer };
      if (!numpy || name.startsWith("whole")) return row;
      const of = name.startsWith("65,536") ? "fineness, 65,536 draws" : "fineness, 4,096 draws";
      return { ...row, of, figure: ms / all.numpy, target: { most, unit: "×" } };
    });
    if (!numpy) {
      const missing = (of: Target) => skipped("fineness against numpy", "no python3 with numpy", of);
      return [...rows, missing("fineness, 4,096 draws"), missing("fineness, 65,536 draws")];
    }
    const figure = listed(65_536);
    const [mean, low, high] = numpy.last().map((value) => value.toFixed(2));
    return [
      ...rows,
      {
        work: "the two agree: mean, low, high",
        measured: [figure.mean, figure.low, figure.high].map((value) => value.toFixed(2)).join(", "),
        against: `numpy ${mean}, ${low}, ${high}`,
      },
    ];
  } finally {
    numpy?.close();
  }
}
