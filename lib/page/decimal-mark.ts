// A figure cut at its decimal mark, so that a column can be aligned there.

export interface CutFigure {
  /** Sign and whole part: "12". */
  readonly whole: string;
  /** Mark and decimals: ".4"; empty without. */
  readonly fraction: string;
  /** What follows: " ± 0.1". */
  readonly rest: string;
}

const FIGURE = /^([<>≤≥≈~+−-]*\s?\d+(?:[  ]\d{3})*)(\.\d+)?((?![\d.]).*)?$/su;

/**
 * Cuts a figure at its decimal mark; the three parts joined give the text again. A dash or an empty text counts
 * as a whole part. Undefined where the text does not begin with a figure.
 * @example cutAtDecimalMark("12.4 ± 0.1")  // { whole: "12", fraction: ".4", rest: " ± 0.1" }
 */
export function cutAtDecimalMark(text: string): CutFigure | undefined {
  if (/^[–—-]?$/.test(text)) return { whole: text, fraction: "", rest: "" };
  const match = FIGURE.exec(text);
  return match ? { whole: match[1]!, fraction: match[2] ?? "", rest: match[3] ?? "" } : undefined;
}

/** The widest fraction and the widest rest of a column, in characters. */
export function widthsAfterMark(texts: readonly string[]): { fraction: number; rest: number } {
  const widths = { fraction: 0, rest: 0 };
  for (const text of texts) {
    const cut = cutAtDecimalMark(text);
    widths.fraction = Math.max(widths.fraction, [...(cut?.fraction ?? "")].length);
    widths.rest = Math.max(widths.rest, [...(cut?.rest ?? "")].length);
  }
  return widths;
}

/**
 * A column for fixed-width text: each figure filled up behind its decimal mark with figure spaces (U+2007, and
 * U+2008 for the mark itself), so that marks stand under each other when the column is set flush right.
 */
export function padAfterMark(texts: readonly string[]): string[] {
  const widths = widthsAfterMark(texts);
  return texts.map((text) => {
    const cut = cutAtDecimalMark(text);
    if (!cut) return text;
    const missing = widths.fraction - cut.fraction.length;
    const fill =
      missing === 0
        ? ""
        : cut.fraction === ""
          ? `\u2008${"\u2007".repeat(missing - 1)}`
          : "\u2007".repeat(missing);
    return cut.whole + cut.fraction + fill + cut.rest + "\u2007".repeat(widths.rest - [...cut.rest].length);
  });
}
