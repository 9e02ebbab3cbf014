// Names of files and anchors, made from names that may come out of a log.

import { fingerprint } from "../log/fingerprint.ts";
import { visible } from "./visible.ts";

/**
 * Lower case, letters and digits of every script and hyphens only, at most 60 characters: can be no path, no option and
 * no device name. Latin letters lose their accents.
 * @example fileStem("Øst / pit: No. 2")  // "ost-pit-no-2"
 */
export function fileStem(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/ø/g, "o")
    .replace(/æ/g, "ae")
    .replace(/ß/g, "ss")
    .normalize("NFKD")
    .replace(/(?<=\p{Script=Latin}\p{M}*)\p{M}/gu, "")
    .normalize("NFC");
  // By whole characters: half of one is none.
  const stem = [...plain.replace(/[^\p{L}\p{N}\p{M}]+/gu, "-")]
    .slice(0, 60)
    .join("")
    .replace(/^[-\p{M}]+|-+$/gu, "");
  if (stem === "") return "unnamed";
  // These open a device instead of a file on some systems.
  return /^(con|prn|aux|nul|com\d|lpt\d)$/.test(stem) ? `${stem}-page` : stem;
}

/** Bytes that leave room in a name of 255 for the notebook, an ending and a mark. */
const MOST_BYTES = 160;

/**
 * What the pages of a log are called, from the log's own name without its ending: as the founder wrote it, so that no
 * two logs of a folder share a page. What some disk refuses, what cannot be seen, and a dot or a hyphen at the start
 * become hyphens; a name that was changed or cut so gets a mark of its own.
 * @example pageStem("песок 2")  // "песок 2"
 */
export function pageStem(logName: string): string {
  const shown = visible(logName)
    .replace(/[\u0000-\u001f\u007f/\\:*?"<>|⟨⟩\ufffd]+/g, "-")
    .replace(/^[-. ]+|[. ]+$/g, "");
  const kept = cutToBytes(shown, MOST_BYTES);
  if (kept === logName && kept !== "") return kept;
  return `${kept}${kept === "" ? "log" : ""}-${fingerprint(logName).slice(0, 4)}`;
}

function cutToBytes(text: string, most: number): string {
  let bytes = 0;
  let kept = "";
  for (const character of text) {
    bytes += new TextEncoder().encode(character).length;
    if (bytes > most) return kept.trimEnd();
    kept += character;
  }
  return kept;
}

/** Gives each stem once: the second "sieving" becomes "sieving-2". */
export function stemGiver(): (name: string) => string {
  const given = new Set<string>();
  return (name) => {
    const stem = fileStem(name);
    let free = stem;
    for (let n = 2; given.has(free); n++) free = `${stem}-${n}`;
    given.add(free);
    return free;
  };
}
