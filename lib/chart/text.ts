// Words in a chart: how wide they are, where they break, how figures read.

// Widths in em by class of letter: no less than in DejaVu Sans, the widest of the faces that "system-ui" stands for,
// nor than in Helvetica (tested), so that words never take more room than was kept for them.
const widths: readonly (readonly [em: number, letters: string])[] = [
  [0.36, "ijlI.,;:'| ·"],
  [0.47, 'frt()[]!-/"'],
  [0.85, "+=<>−±#~&×÷^"],
  [1.03, "mwMW%@—…→←"],
];
const known = new Map(widths.flatMap(([em, letters]) => [...letters].map((letter) => [letter, em])));

/** Width of the text in px, on the safe side; letters outside the Latin, Greek and Cyrillic count as more than one em. */
export function textWidth(text: string, sizePx: number): number {
  let em = 0;
  for (const letter of text) em += letterEm(letter);
  return em * sizePx;
}

function letterEm(letter: string): number {
  const plain = letter.codePointAt(0)! >= 0x590 ? 1.05 : letter === letter.toLowerCase() ? 0.665 : 0.79;
  return known.get(letter) ?? plain;
}

/** The text if it fits, else its beginning and "…". */
export function clip(text: string, widthPx: number, sizePx: number): string {
  if (textWidth(text, sizePx) <= widthPx) return text;
  // Forward, and no farther than it goes: a name may be as long as a book.
  let kept = "";
  let em = 0;
  for (const letter of text) {
    em += letterEm(letter);
    if (kept !== "" && (em + letterEm("…")) * sizePx > widthPx) break;
    kept += letter;
  }
  return `${kept.trimEnd()}…`;
}

/** Lines no wider than the width, broken at spaces; what still doesn't fit, or goes past the last line, is clipped. */
export function wrap(text: string, widthPx: number, sizePx: number, mostLines = 3): string[] {
  const lines: string[] = [];
  let line = "";
  const words = text.split(/\s+/u).filter((word) => word !== "");
  for (const [at, word] of words.entries()) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || textWidth(longer, sizePx) <= widthPx) {
      line = longer;
    } else if (lines.length === mostLines - 1) {
      line = [line, ...words.slice(at)].join(" ");
      break;
    } else {
      lines.push(line);
      line = word;
    }
  }
  if (line !== "") lines.push(line);
  return lines.map((each) => clip(each, widthPx, sizePx));
}

/** "66.1": at most so many decimals, without trailing zeros, with a true minus sign; "no figure" for NaN. */
export function figure(value: number, decimals = 1): string {
  if (Number.isNaN(value)) return "no figure";
  const text = String(Number(value.toFixed(decimals)));
  return (text === "-0" ? "0" : text).replace("-", "−");
}

/** "a", "a and b", "a, b and c". */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
