// A sheet of the founder's own: loss on drying of portions of one bag, its mean, and a straight line.

import { sheetFit } from "../../lib/finding/sheet-fit.ts";
import { logSheets } from "../../lib/sheet/log-sheets.ts";
import type { Seeded } from "../seeded.ts";
import { foundersScale } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted } from "./printed.ts";
import { head, logOf } from "./read.ts";

const notebook = "own sheets";

export function sheetsOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const scale = foundersScale(random, "pocket scale", {
    stepG: 0.05,
    withinG: 0.1,
    capacityG: 200,
    flat: random.uniform() < 0.5,
  });
  const bag = random.uniform(6, 12);
  const portions = Array.from({ length: random.integer(3, 8) }, () => {
    const damp = random.uniform(38, 42);
    const percent = bag + 0.15 * random.normal();
    return { percent, damp: scale.weigh(damp), dry: scale.weigh(damp * (1 - percent / 100)) };
  });
  const log = logOf(`${head("Sheets")}scales:
${scale.line}
sheets:
  drying:
    columns:
      portion: text
      damp: { unit: g, scale: pocket scale }
      dry: { unit: g, scale: pocket scale }
      loss: { unit: "% of damp mass", formula: "percentOf(damp - dry, damp)" }
    rows:
${portions.map(({ damp, dry }, k) => `      - { portion: P${k + 1}, damp: ${damp}, dry: ${dry} }`).join("\n")}
    foot:
      mean loss: mean(loss)
`);
  const [sheet] = logSheets(log);
  portions.forEach(({ percent }, k) => {
    const cell = sheet!.cell(k, "loss");
    if (cell.kind === "figure")
      note({
        founder,
        notebook,
        figure: "loss on drying of a portion",
        ends: asPrinted(cell.figure, cell.atLeast),
        truth: percent,
      });
  });
  const foot = sheet!.foot[0]!.cell;
  if (foot.kind === "figure")
    note({
      founder,
      notebook,
      // What the mean of a column holds is the doubt of its rows: the portions that were dried, not the bag.
      figure: "mean loss of these portions",
      ends: asPrinted(foot.figure, foot.atLeast),
      truth: portions.reduce((all, { percent }) => all + percent, 0) / portions.length,
    });
  const slope = random.uniform(-4, 4);
  const points = Array.from({ length: random.integer(4, 9) }, (_, k) => ({
    x: k,
    y: 20 + slope * k + 2 * random.normal(),
  }));
  const at = (value: number) => ({ value, low: value, high: value });
  const fit = sheetFit(
    points.map(({ x }) => at(x)),
    points.map(({ y }) => at(y)),
    "straight",
  );
  if (fit.slope)
    note({
      founder,
      notebook,
      figure: "slope of a straight line",
      ends: { ...fit.slope, atLeast: false },
      truth: slope,
    });
}
