// A source with how far it is known, said once.

/**
 * "M. Ring, trade article (read)"; a source that says it is our own, or common practice, is not told so again.
 * @example taggedSource("Common practice; no source read", "common practice") // "Common practice; no source read"
 */
export function taggedSource(source: string, tag: string): string {
  const said = tag !== "read" && source.toLowerCase().includes(tag);
  return said ? source : `${source} (${tag})`;
}
