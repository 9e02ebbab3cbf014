// The files that a page hands on: names that stay in their folder, sizes, fingerprints.

import { fingerprint } from "../log/fingerprint.ts";
import type { Attachment } from "./blocks.ts";
import { visibleLine } from "./visible.ts";

/** Folder beside a Markdown page that holds them, so that no name of a founder's meets one of the page's own. */
const FOLDER = "data";

export interface AttachedFile {
  /** As the founder has it, without folders. */
  readonly name: string;
  /** Path from the Markdown page. */
  readonly path: string;
  readonly text: string;
  readonly bytes: Uint8Array;
  /** "the log that this page was made from; 5123 bytes, fingerprint bf9cf968" */
  readonly says: string;
}

/** Each with a name of its own: of two files of one name the second is called "2-" and its name. */
export function attachedFiles(attachments: readonly Attachment[]): readonly AttachedFile[] {
  const given = new Set<string>();
  return attachments.map(({ name, text, says }) => {
    const own = nameInFolder(name);
    let free = own;
    for (let n = 2; given.has(free.toLowerCase()); n++) free = `${n}-${own}`;
    given.add(free.toLowerCase());
    const bytes = new TextEncoder().encode(text);
    return {
      name: free,
      path: `${FOLDER}/${free}`,
      text,
      bytes,
      says: `${says}; ${bytes.length} bytes, fingerprint ${fingerprint(text)}`,
    };
  });
}

/** The last part of a path, without characters that cannot be seen or that a disk refuses. */
function nameInFolder(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? "";
  const plain = visibleLine(last)
    .replace(/[<>:"|?*]/g, "-")
    .replace(/^\.+|[. ]+$/g, "");
  return plain === "" ? "unnamed.txt" : plain;
}
