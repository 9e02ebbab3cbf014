// Commas within ( ) within { } on one line: YAML would part there, and cut a formula such as max(a, b) in two.

const comma = "\uE000";
const quote = "\uE001";
/** Nothing that a hand writes on one line is longer. */
const lineLimit = 2000;

/** The text with such commas and quotes behind signs that YAML takes for letters, character for character. */
export function keepFlowCommas(text: string): string {
  return text.replace(/^.*$/gm, (line) =>
    line.length <= lineLimit && line.includes("{") && line.includes("(") ? keptIn(line) : line,
  );
}

/** The text as typed. */
export function withFlowCommas(text: string): string {
  return text.replaceAll(comma, ",").replaceAll(quote, '"');
}

function keptIn(line: string): string {
  const signs = line.split("");
  let braces = 0;
  /** Where the outermost ( of a plain text stands open. */
  let from: number | undefined;
  let depth = 0;
  for (let at = 0; at < signs.length; at++) {
    const sign = signs[at]!;
    if (from === undefined) {
      if (sign === "#" && (at === 0 || /\s/.test(signs[at - 1]!))) break;
      if (/["']/.test(sign) && /[{,[:]\s*$/.test(line.slice(0, at))) {
        const end = line.indexOf(sign, at + 1);
        if (end < 0) break;
        at = end;
      } else if (sign === "{") braces += 1;
      else if (sign === "}") braces -= 1;
      else if (sign === "(" && braces > 0) [from, depth] = [at, 1];
    } else if (sign === "(") depth += 1;
    else if (sign === ")") {
      depth -= 1;
      if (depth > 0) continue;
      for (let inside = from; inside < at; inside++) {
        if (signs[inside] === ",") signs[inside] = comma;
        if (signs[inside] === '"') signs[inside] = quote;
      }
      from = undefined;
    }
  }
  return signs.join("");
}
