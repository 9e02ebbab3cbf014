// Every message with an example of what it is said with.

import type { Examples } from "./example.ts";
import { castings } from "./examples/castings.ts";
import { diary } from "./examples/diary.ts";
import { grain } from "./examples/grain.ts";
import { guide } from "./examples/guide.ts";
import { heap } from "./examples/heap.ts";
import { leftOut } from "./examples/left-out.ts";
import { logHeap } from "./examples/log-heap.ts";
import { logTrial } from "./examples/log-trial.ts";
import { logWriting } from "./examples/log-writing.ts";
import { logYaml } from "./examples/log-yaml.ts";
import { page } from "./examples/page.ts";
import { quantity } from "./examples/quantity.ts";
import { sandBench } from "./examples/sand-bench.ts";
import { sandGrain } from "./examples/sand-grain.ts";
import { save } from "./examples/save.ts";
import { sheet } from "./examples/sheet.ts";
import { standing } from "./examples/standing.ts";
import { trial } from "./examples/trial.ts";

/** By code, the arguments by name in their order; a message that is said with nothing needs none. */
export const examples: Examples = Object.freeze({
  ...castings,
  ...diary,
  ...grain,
  ...guide,
  ...heap,
  ...leftOut,
  ...logHeap,
  ...logTrial,
  ...logWriting,
  ...logYaml,
  ...page,
  ...quantity,
  ...sandBench,
  ...sandGrain,
  ...save,
  ...sheet,
  ...standing,
  ...trial,
});
