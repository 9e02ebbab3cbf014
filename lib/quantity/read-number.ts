// Reads the number at the head of a text, fractions and all.

export interface NumberAtHead {
  readonly value: number;
  readonly rest: string;
}

const vulgar: Record<string, string> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** Ordinary spaces, an ordinary minus before a number, "1/2" for "½", "±" for its typed forms. */
export function plainFigureText(text: string): string {
  return text
    .replace(/[\s\u00a0\u2007-\u200a\u202f\u2060\ufeff]+/g, " ")
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgar[sign]}`)
    .replaceAll("\u2044", "/")
    .replace(/\+ ?\/ ?[-\u2212\u2013]|\+[-\u2212\u2013]/g, "±")
    .replace(/(^|[± (e])[\u2212\u2013] ?(?=[\d.])/gi, "$1-")
    .trim();
}

const mixed = /^([+-]?)(\d+) (\d+) ?\/ ?(\d+)(?![\d.])/;
const fraction = /^([+-]?)(\d+) ?\/ ?(\d+)(?![\d.])/;
const decimal = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/i;

/** "13/32 in" is 0.40625 and " in"; undefined where no number stands at the head. A zero below the line gives NaN. */
export function numberAtHead(text: string): NumberAtHead | undefined {
  const parts = mixed.exec(text) ?? fraction.exec(text);
  if (parts) {
    const [whole, over, under] = parts.length === 5 ? parts.slice(2) : ["0", ...parts.slice(2)];
    const size = Number(under) === 0 ? Number.NaN : Number(whole) + Number(over) / Number(under);
    return { value: parts[1] === "-" ? -size : size, rest: text.slice(parts[0].length) };
  }
  const plain = decimal.exec(text);
  return plain ? { value: Number(plain[0]), rest: text.slice(plain[0].length) } : undefined;
}
