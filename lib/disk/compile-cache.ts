// What node has compiled is kept for the next call, by a node that can (22.1 and newer).

import * as module from "node:module";
import { join } from "node:path";
import { packageFolder } from "./package-folder.ts";

/** Types of node 20 do not know it yet. */
type Keeping = { readonly enableCompileCache?: (folder: string) => unknown };

/**
 * Within the package's own folder: what others can write to could hand us code of theirs. Where it cannot be written,
 * as in an installation for all users, nothing is kept and nobody hears of it. A build sweeps it away.
 */
export function keepCompiled(): void {
  (module as Keeping).enableCompileCache?.(join(packageFolder, "dist", ".compiled"));
}
