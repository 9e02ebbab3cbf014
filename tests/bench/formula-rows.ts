// A formula over a million rows, against the loop that one would write by hand and mathjs compiled and run row by row.

import { compile } from "mathjs/number";
import { unitNamed } from "../../lib/quantity/read-unit.ts";
import { readFormula } from "../../lib/sheet/formula.ts";
import type { NameKind } from "../../lib/sheet/formula-type.ts";
import type { Row } from "./row.ts";
import { interleaved, processorMs } from "./timing.ts";

const ROWS = 1_000_000;
const text = "(wet - dry) / wet * 100";

/** Held in a list with another, so that it is called as a function of any columns is. */
const byHand = [
  (wet: Float64Array, dry: Float64Array, out: Float64Array): void => {
    for (let i = 0; i < out.length; i++) out[i] = ((wet[i]! - dry[i]!) / wet[i]!) * 100;
  },
  (wet: Float64Array, dry: Float64Array, out: Float64Array): void => {
    for (let i = 0; i < out.length; i++) out[i] = wet[i]! - dry[i]!;
  },
];

export async function formulaRows(): Promise<Row[]> {
  const gram: NameKind = { kind: "number", unit: unitNamed("g")!, per: "row" };
  const scope = {
    names: new Map([
      ["wet", gram],
      ["dry", gram],
    ]),
    in: "column" as const,
  };
  const { value: formula } = readFormula(text, scope);
  if (!formula) throw new Error("the formula was not read");
  const wet = Float64Array.from({ length: ROWS }, (_, i) => 150 + (i % 70) / 10);
  const dry = wet.map((mass, i) => mass - (i % 50) / 10);
  const [ours, hand, theirs] = [new Float64Array(ROWS), new Float64Array(ROWS), new Float64Array(ROWS)];
  // The loop by hand has seen other columns before, as a function in use has.
  for (const loop of byHand) loop(dry, wet, hand);
  const code = compile(text);
  const byRow = (): void => {
    for (let i = 0; i < ROWS; i++) theirs[i] = code.evaluate({ wet: wet[i], dry: dry[i] }) as number;
  };
  const reading = 500;
  const readMany = (): void => {
    for (let k = 0; k < reading; k++) readFormula(text, scope);
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
    {
      work: "reading and checking that formula",
      measured: `${(ms.read / reading).toFixed(3)} ms`,
      against: "",
    },
  ];
}
