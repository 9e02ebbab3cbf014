// All examples of the comments as one script for the compiler: what is shown must be accepted by strict types.

import type { ReferenceEntry } from "../../lib/disk/reference-entries.ts";
import { examplesInWords, examplesOf } from "../public-examples.ts";
import { statedValue } from "../stated-value.ts";

/** What an example may take for given: a log that was read, its text, a page, a notebook, and a way to write a file. */
const GIVEN = `declare const log: door.Log;
declare const text: string;
declare const page: door.Page;
declare const fineness: door.Notebook;
declare function writeFile(name: string, text: string): Promise<void>;`;

export function exampleScript(entries: readonly ReferenceEntry[]): string {
  const names = entries.map(({ name }) => name).sort();
  const examples = entries.flatMap(({ kind, name, comment }) => {
    if (kind !== "function" || examplesInWords.includes(name)) return [];
    return examplesOf(comment).map((example) => ({ name, code: statedValue(example).code.trim() }));
  });
  const bodies = examples.map(
    ({ name, code }, i) => `/* ${name} */\nexport async function example${i}() {\n${code}\n}`,
  );
  return [
    `import type * as door from "mullbook";\nimport { ${names.join(", ")} } from "mullbook";`,
    GIVEN,
    ...bodies,
    "",
  ].join("\n\n");
}
