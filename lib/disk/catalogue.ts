// npm run catalogue: the list of messages, to read and for a script, into out/.

import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../catalogue/catalogue.ts";
import { catalogueMarkdown } from "../catalogue/markdown.ts";

const folder = "out";
const entries = catalogue();
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, "messages.md"), catalogueMarkdown(entries));
writeFileSync(join(folder, "messages.json"), `${JSON.stringify(entries, null, 2)}\n`);
console.log(`${entries.length} messages: ${join(folder, "messages.md")}, ${join(folder, "messages.json")}`);
