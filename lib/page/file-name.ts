// Names of files and anchors, made from names that may come out of a log.

/**
 * Lower case, digits and hyphens only, at most 60 characters: can be no path, no option and no device name.
 * @example fileStem("Øst / pit: No. 2")  // "ost-pit-no-2"
 */
export function fileStem(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/ø/g, "o")
    .replace(/æ/g, "ae")
    .replace(/ß/g, "ss")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "");
  const stem = plain
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
  if (stem === "") return "unnamed";
  // These open a device instead of a file on some systems.
  return /^(con|prn|aux|nul|com\d|lpt\d)$/.test(stem) ? `${stem}-page` : stem;
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
