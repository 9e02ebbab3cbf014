// A formula over a million rows, against the loop that one would write by hand and mathjs compiled and run row by row;
// against arquero and R where they are there.

import { compile } from "mathjs/number";
import { arqueroMs, rMs } from "./column-peers.ts";
import { byHand, columns, readBench, text } from "./formula-bench.ts";
import { type Row, skipped } from "./row.ts";
import { interleaved, processorMs } from "./timing.ts";

const ROWS = 1_000_000;

export async function formulaRows(): Promise<Row[]> {
  const formula = readBench();
  const { wet, dry, out: ours } = columns(ROWS);
  const [hand, theirs] = [new Float64Array(ROWS), new Float64Array(ROWS)];
  // The loop by hand has seen other columns before, as a function in use has.
  for (const loop of byHand) loop(dry, wet, hand);
  const code = compile(text);
  const byRow = (): void => {
    for (let i = 0; i < ROWS; i++) theirs[i] = code.evaluate({ wet: wet[i], dry: dry[i] }) as number;
  };
  const reading = 500;
  const readMany = (): void => {
    for (let k = 0; k < reading; k++) readBench();
  };
  const ms = await interleaved(
    {
      ours: () => processorMs(() => formula.run([wet, dry], ours)),
      hand: () => processorMs(() => byHand[0]!(wet, dry, hand)),
      read: () => processorMs(readMany),
    },
    { rounds: 25, warm: 5 },
  );
  const mathjs = (await interleaved({ mathjs: () => processorMs(byRow) }, { rounds: 3, warm: 1 })).mathjs;
  const off = ours.findIndex((figure, i) => figure !== hand[i] || Math.abs(figure - theirs[i]!) > 1e-9);
  if (off >= 0) throw new Error(`row ${off}: ${ours[off]}, by hand ${hand[off]}, by mathjs ${theirs[off]}`);
  const time = (value: number): string => `${value.toFixed(1)} ms`;
  return [
    {
      of: "formula",
      work: `formula ${text}, 1e6 rows, no ±`,
      measured: time(ms.ours),
      against: `hand-written loop ${time(ms.hand)}`,
      figure: ms.ours / ms.hand,
      target: { most: 4, unit: "×" },
    },
    {
      work: "the same by mathjs, compiled and run row by row (the peer; no target)",
      measured: time(mathjs),
      against: `hand-written loop ${time(ms.hand)}: ${(mathjs / ms.hand).toFixed(0)} ×`,
    },
    peer(
      "arquero",
      await arqueroMs(wet, dry, hand),
      ms.hand,
      "not installed (npm install --no-save arquero)",
    ),
    peer("R, its own vectors", rMs(ROWS), ms.hand, "no Rscript on the path"),
    {
      work: "reading and checking that formula",
      measured: `${(ms.read / reading).toFixed(3)} ms`,
      against: "",
    },
  ];
}

function peer(name: string, found: number | undefined, hand: number, why: string): Row {
  const work = `the same by ${name} (a peer; no target)`;
  if (found === undefined) return skipped(work, why);
  return {
    work,
    measured: `${found.toFixed(1)} ms`,
    against: `hand-written loop ${hand.toFixed(1)} ms: ${(found / hand).toFixed(1)} ×`,
  };
}
