// Saves version 2 over version 1 and is killed in the middle: before or after the nth call of one kind on the disk.

import { join } from "node:path";
import { saveLog } from "../../lib/disk/save.ts";
import { DISK, type Disk } from "../../lib/disk/save-replace.ts";
import { version } from "./saving.ts";

const [folder = "", step = "", nth = "", when = ""] = process.argv.slice(2);
let calls = 0;
const die = (): never => {
  process.kill(process.pid, "SIGKILL");
  for (;;);
};
const cutOff = (...given: readonly unknown[]): unknown => {
  calls++;
  if (calls === Number(nth) && when === "before") die();
  const done = (DISK[step as keyof Disk] as (...given: readonly unknown[]) => unknown)(...given);
  if (calls === Number(nth)) die();
  return done;
};
const saved = saveLog(
  join(folder, "log.yaml"),
  { base: version(1), texts: version(2) },
  { ...DISK, [step]: cutOff },
);
process.stdout.write(saved.kind);
