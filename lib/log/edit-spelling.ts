// How a text is written as a YAML scalar: without quotes where it may, in the quotes that stood there, else in new ones.

export type ScalarStyle = "plain" | "single" | "double" | "block";

/** By the sign that a scalar begins with in the file. */
export function styleAt(text: string, offset: number): ScalarStyle {
  const sign = text[offset] ?? "";
  if (sign === '"' || /[“”„]/.test(sign)) return "double";
  if (sign === "'" || /[‘’]/.test(sign)) return "single";
  return sign === "|" || sign === ">" ? "block" : "plain";
}

/**
 * Spellings of the text, the best first; each is on one line and the last can hold any text. In brackets (flow) fewer
 * signs may stand without quotes.
 */
export function spellings(text: string, style: ScalarStyle, flow: boolean): string[] {
  const double = doubleQuoted(text);
  if (style === "double" || unprintable.test(text)) return [double];
  const single = `'${text.replaceAll("'", "''")}'`;
  if (style === "single") return [single, double];
  const quoted = /["\\]/.test(text) && !text.includes("'") ? [single, double] : [double];
  return mayBePlain(text, flow) ? [text, ...quoted] : quoted;
}

/**
 * Spellings in the manner of a text that stands there or beside it: with its quotes where somebody chose them. Quotes that
 * it could not do without, as around the comma of "151,2 g" in brackets, go with it.
 */
export function spellingsLike(text: string, like: string, style: ScalarStyle, flow: boolean): string[] {
  const kept = spellings(text, style, flow);
  const quoted = style === "single" || style === "double";
  return quoted && mayBePlain(text, flow) && !mayBePlain(like, flow) ? [text, ...kept] : kept;
}

/** Signs that only an escape in double quotes carries whole: line breaks, controls, signs that cannot be seen, halves of pairs. */
const unprintable =
  /[\x00-\x1F\x7F-\x9F\u2028\u2029\u200B-\u200F\u202A-\u202E\u2066-\u2069\uFEFF\uFFFE\uFFFF\uE000\uE001]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;
const eachUnprintable = new RegExp(unprintable.source, "g");

function doubleQuoted(text: string): string {
  const signs = text.replace(/["\\]/g, "\\$&").replace(eachUnprintable, (sign) => {
    const short = { "\n": "\\n", "\r": "\\r", "\t": "\\t" }[sign];
    return short ?? `\\u${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`;
  });
  return `"${signs}"`;
}

/** True where YAML 1.2 (7.3.3, plain style) reads the text back as it stands, and as a text. */
function mayBePlain(text: string, flow: boolean): boolean {
  if (text === "" || text.trim() !== text || /^(~|null|Null|NULL|---.*|\.\.\..*)$/.test(text)) return false;
  if (/^[-?:](\s|$)|^[,[\]{}#&*!|>'"%@`“”„‘’\u00A0]|:(\s|$)|\s#|^=$/.test(text)) return false;
  return !flow || !/[,[\]{}]/.test(outsideParentheses(text));
}

/** Commas within ( ) part nothing: the reader keeps them together. */
function outsideParentheses(text: string): string {
  let depth = 0;
  let result = "";
  for (const sign of text) {
    if (sign === "(") depth += 1;
    if (depth === 0 || !/[,"]/.test(sign)) result += sign;
    if (sign === ")") depth = Math.max(0, depth - 1);
  }
  return result;
}
