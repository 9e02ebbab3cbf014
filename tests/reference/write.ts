// npm run references: works out every row, says which do not stand, and writes the table.

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { judge } from "./published.ts";
import { sections } from "./rows.ts";
import { readme } from "./table.ts";

const judged = sections.map((section) => ({ ...section, judged: section.rows.map(judge) }));
const fallen = judged.flatMap((section) => section.judged.filter(({ faults }) => faults.length > 0));
for (const { row, faults } of fallen) console.error(`${row.figure}: ${faults.join("; ")}`);
if (fallen.length > 0) {
  console.error(`Nothing written: ${fallen.length} rows do not stand.`);
  process.exitCode = 1;
} else {
  const path = join(import.meta.dirname, "README.md");
  writeFileSync(path, readme(judged));
  console.log(`${judged.reduce((all, { rows }) => all + rows.length, 0)} rows written to ${path}`);
}
