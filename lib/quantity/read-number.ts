// Reads the number at the head of a text, fractions and all.

export interface NumberAtHead {
  readonly value: number;
  readonly rest: string;
}

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * Ordinary signs for all that look like them: full-width letters and digits, spaces of every width, minus and ± as they are
 * typed, "1/2" for "½", "6.4e-6" for "6.4 × 10⁻⁶" and "6.4e-6 ± 2.5e-6" for "(6.4 ± 2.5) × 10⁻⁶". What has no width is
 * left out: it comes along with copied figures, and nobody sees it.
 */
export function plainFigureText(text: string): string {
  return (/[^ -~]/.test(text) ? inPlainSigns(text) : text)
    .replace(/\+ *\/ *[-\u2212\u2013]|\+[-\u2212\u2013]/g, "±")
    .replace(
      /(?<=[\d)]) *[×x*·⋅] *10(?:\^([-+\u2212\u2013]?\d+)|([⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))(?!\d)/gi,
      (_, caret?: string, raised?: string) => `e${caret ?? lowered(raised!)}`,
    )
    .replace(/(^ *|± *|\(|e)[-\u2010\u2011\u2212\u2013] *(?=[\d.])/gi, "$1-")
    .replace(/^ *\( *([^()±]*\d) *± *([^()±]*\d) *\) *(e[-+]?\d+)?/i, "$1$3 ± $2$3")
    .replace(/ +/g, " ")
    .trim();
}

function inPlainSigns(text: string): string {
  return text
    .replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g, "")
    .replace(/[\uff01-\uff5e\u3380-\u33df]/g, (sign) => sign.normalize("NFKC"))
    .replace(/\s/g, " ")
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKC")}`)
    .replaceAll("\u2044", "/");
}

function lowered(raised: string): string {
  return [...raised].map((c) => (c === "⁻" ? "-" : c === "⁺" ? "+" : superscripts.indexOf(c))).join("");
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
