// An invented log with a CSV file, in a folder of the test's own.

import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { LogText } from "../../lib/index.ts";

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), "mullbook-save-"));
}

/** Version n: the log and the file say it in their first and last lines, so that a mixed or a cut text is seen. */
export function version(n: number): LogText[] {
  const filler = Array.from({ length: 40 }, (_, i) => `# line ${i} of an invented log`).join("\n");
  const rows = Array.from({ length: 200 }, (_, i) => `Alder ${i},${(150 + i / 10).toFixed(1)}`).join("\n");
  return [
    {
      name: "log.yaml",
      text: `format: 1\ntitle: version ${n}\n${filler}\nsheets:\n  bags:\n    columns: { bag: text, damp: g }\n    rows: bags.csv\n# end of version ${n}\n`,
    },
    { name: "bags.csv", text: `bag,damp\nversion,${n}\n${rows}\nend,${n}\n` },
  ];
}

export function folderWith(texts: readonly LogText[]): string {
  const folder = temporaryFolder();
  for (const { name, text } of texts) writeFileSync(join(folder, name), text);
  return folder;
}

export function textsIn(folder: string): LogText[] {
  return ["log.yaml", "bags.csv"].map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));
}

/** What a save may leave: the files and what they were before, and nothing else. */
export function namesIn(folder: string): string[] {
  return readdirSync(folder).sort();
}
