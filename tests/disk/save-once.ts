// Saves one version over another: folder, base, new version, and perhaps a moment to wait for, so that several meet.

import { join } from "node:path";
import { saveLog } from "../../lib/disk/save.ts";
import { version } from "./saving.ts";

const [folder = "", base = "", next = "", moment = "0"] = process.argv.slice(2);
const request = { base: version(Number(base)), texts: version(Number(next)) };
while (Date.now() < Number(moment));
process.stdout.write(JSON.stringify(saveLog(join(folder, "log.yaml"), request)));
