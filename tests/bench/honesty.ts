// What is printed with a ± against what is true, on simulated founders' years: npm run honesty [parts of the year].
// HONESTY=n founders, 2,000 unless given. Parts as tests/honesty/run.ts names them, and "fine": the moisture trial by
// number of batches and kind of truth; all unless named. A part's table is printed as soon as it is there.

import { foundersYears, type PartName, partNames } from "../honesty/run.ts";
import { ledgerTable, tableHead } from "../honesty/table.ts";
import { fineTables } from "./honesty-fine.ts";

const founders = Number(process.env.HONESTY ?? 2000);
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => name !== "fine" && !partNames.includes(name as PartName));
if (unknown.length > 0 || !(founders >= 1)) {
  console.error(
    `No part ${unknown.join(", ")}; there are ${[...partNames, "fine"].join(", ")}. HONESTY is a count.`,
  );
  process.exit(2);
}
const wanted = (name: string): boolean => asked.length === 0 || asked.includes(name);

console.log(
  `${founders} founders; 95 % intervals as printed. "At least": a lower bound, by what the log lacks.\n`,
);
console.log(tableHead());
for (const part of partNames.filter(wanted)) {
  const before = process.cpuUsage();
  const into = foundersYears(part, founders);
  const { user, system } = process.cpuUsage(before);
  console.log(ledgerTable(into));
  console.error(`${part}: ${((user + system) / 1000 / founders).toFixed(0)} ms of processor a founder`);
}
if (wanted("fine")) fineTables(Math.max(10, Math.round(founders / 16)), 1024);
