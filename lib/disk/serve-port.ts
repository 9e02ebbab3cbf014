// The port that a log is served on: the same one for the same file, so that a browser finds its drafts again.

import { createHash } from "node:crypto";
import { realpathSync } from "node:fs";
import { homedir } from "node:os";

/** The ports that belong to nobody: RFC 6335, section 6. */
const [FIRST, LAST] = [49_152, 65_535];

/**
 * A port for a log, drawn by its path and its user's home: spread over all of the dynamic ports, and the same after a
 * restart. What guards the pages is the secret of their address, not the port.
 */
export function portOf(path: string): number {
  const drawn = createHash("sha256")
    .update(`${homedir()}\0${realpathSync(path)}`)
    .digest()
    .readUInt32BE();
  return FIRST + (drawn % (LAST - FIRST + 1));
}
