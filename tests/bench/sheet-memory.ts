// Works 10,000 rows out with all intervals, and prints what memory and time the process took.

import { sheet } from "../../lib/index.ts";
import { readAll, scales, specOf } from "./sheet-specimens.ts";

const made = sheet(specOf(10_000), { scales });
readAll(made, true);
for (const { cell } of made.foot) if (cell.kind === "figure") cell.figure.shares.length;
const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
console.log(JSON.stringify({ megabytes: maxRSS / 1024, seconds: (userCPUTime + systemCPUTime) / 1e6 }));
