// A diary of a heap that stays as it is: its mean and limits, and how often its chart calls out for nothing.

import { controlReport } from "../../lib/trial/control-report.ts";
import type { Seeded } from "../seeded.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted } from "./printed.ts";
import { head, logOf } from "./read.ts";

const notebook = "diary";

export function diaryOfTheYear(random: Seeded, founder: number, { note, noteChance }: Ledger): void {
  const days = random.integer(10, 40);
  const [compactability, strength] = [random.uniform(40, 48), random.uniform(55, 80)];
  const [moves, scatters] = [random.uniform(1.2, 2.5), random.uniform(2, 5)];
  const batches = Array.from({ length: days }, (_, k) => {
    const date = new Date(Date.UTC(2026, 0, 3 + 7 * k)).toISOString().slice(0, 10);
    const value = (mean: number, sd: number): string => (mean + sd * random.normal()).toFixed(1);
    return `  day ${k + 1}: { date: ${date}, compactability: ${value(compactability, moves)} ± 1 %, green compression: ${value(strength, scatters)} ± 2 kPa }\n`;
  });
  const { controlled } = controlReport(logOf(`${head("Diary")}batches:\n${batches.join("")}`));
  for (const { series, chart, doubt, verdict, falseAlarms, change } of controlled) {
    const [mean, sd] = series.property === "compactability" ? [compactability, moves] : [strength, scatters];
    const put = (figure: string, value: number, half: number, truth: number): void =>
      note({
        founder,
        notebook,
        figure,
        ends: asPrinted({ value, low: value - half, high: value + half }),
        truth,
      });
    put("mean of a series", chart.mean, doubt.mean, mean);
    put("upper limit", chart.upper, doubt.limit, mean + 3 * sd);
    put("lower limit", chart.lower, doubt.limit, mean - 3 * sd);
    noteChance({
      founder,
      notebook,
      figure: "no change point suggested, of all charts of a heap",
      promised: 97.5,
      within: 2.5,
      kept: !change?.suggested,
    });
    if (!falseAlarms) continue;
    const called = verdict !== "steady";
    noteChance({
      founder,
      notebook,
      figure: "chart with a signal, though nothing moved",
      promised: falseAlarms.any,
      within: 4,
      kept: called,
    });
    const standing = verdict === "moved" || verdict === "perhaps moved";
    noteChance({
      founder,
      notebook,
      figure: "signal that still stands",
      promised: falseAlarms.standing,
      within: 2,
      kept: standing,
    });
  }
}
