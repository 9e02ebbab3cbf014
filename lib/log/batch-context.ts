// What the reader of batches needs besides the batches themselves.

import type { BatchMemory } from "./batch-memory.ts";
import type { Files } from "./csv-file.ts";
import type { Entry, Report } from "./node.ts";
import type { Instruments } from "./read-test.ts";

export interface BatchContext {
  readonly instruments: Instruments;
  readonly files: Files;
  /** Names of the log's sands; a name among them counts even where the sand's own lines are at fault. */
  readonly sands: readonly string[];
  /** True when a line of the batch that stands there could not be read. */
  readonly spoiled: (entry: Entry) => boolean;
  readonly reportAbout: (name: string) => Report;
  /** Of the log before an edit. */
  readonly memory?: BatchMemory | undefined;
}
