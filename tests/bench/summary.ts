// Every target of the library once, with what the rows said of it.

import { isMet, type Row } from "./row.ts";
import { type Target, targets } from "./targets.ts";

export function summary(rows: readonly Row[]): string {
  const lines = (Object.keys(targets) as Target[]).map((name) => {
    const told = rows.filter(({ of }) => of === name);
    const judged = told.filter((row) => isMet(row) !== undefined);
    const missed = judged.filter((row) => !isMet(row));
    const says =
      judged.length > 0
        ? `${judged.length - missed.length} of ${judged.length} rows`
        : (told[0]?.measured ?? "not in this run");
    const worst = missed.map(({ work, figure, target }) => `${work}: ${round(figure!)} ${target!.unit}`);
    return `| ${[targets[name], says, judged.length === 0 ? "" : missed.length === 0 ? "yes" : "NO", worst.join("; ")].join(" | ")} |`;
  });
  return ["| target | rows that meet it | met | what misses it |", "|---|---|---|---|", ...lines].join("\n");
}

const round = (figure: number): number => Number(figure.toPrecision(3));
