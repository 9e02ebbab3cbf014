// Saves one version after another until it is killed, over whatever it finds; says so when the first is done.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { saveLog } from "../../lib/disk/save.ts";
import { textsIn, version } from "./saving.ts";

const folder = process.argv[2] ?? "";
const found = /version (\d+)/.exec(readFileSync(join(folder, "log.yaml"), "utf8"))?.[1];
for (let n = Number(found) + 1; ; n++) {
  const saved = saveLog(join(folder, "log.yaml"), { base: textsIn(folder), texts: version(n) });
  if (saved.kind !== "saved") {
    process.stdout.write(JSON.stringify(saved));
    process.exit(1);
  }
  if (n === Number(found) + 1) process.stdout.write("saving\n");
}
