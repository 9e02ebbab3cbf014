// Whether a word of a call names a founder's script.

export function isScript(word: string): boolean {
  return /\.(ts|mts|js|mjs)$/i.test(word);
}
