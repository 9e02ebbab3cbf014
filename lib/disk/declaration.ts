// One declaration of a .d.ts file with the comment before it, found without a compiler.

export interface Declaration {
  readonly kind: "function" | "value" | "type";
  /** As the file has it, without "export" and "declare"; overloads one after the other. */
  readonly signature: string;
  /** The lines of the comment without its stars; empty where there is none. */
  readonly comment: string;
}

/** The declaration that a .d.ts text exports under a name; undefined where it exports none. */
export function declarationIn(text: string, name: string): Declaration | undefined {
  const pattern = new RegExp(
    `^export (?:declare )?(?:abstract )?(function|const|class|interface|type) ${name.replace("$", "\\$")}\\b`,
    "gm",
  );
  const found = [...text.matchAll(pattern)];
  const first = found[0];
  if (!first) return undefined;
  const word = first[1]!;
  const kind = word === "function" ? "function" : /interface|type/.test(word) ? "type" : "value";
  const signatures = found.map(({ index }) =>
    text.slice(index, endOf(text, index)).replace(/^export (?:declare )?/, ""),
  );
  return { kind, signature: signatures.join("\n"), comment: commentBefore(text, first.index) };
}

/** Just after the semicolon, or the brace of an interface or class, that ends the declaration that begins here. */
function endOf(text: string, start: number): number {
  const braced = /^export (?:declare )?(?:abstract )?(?:interface|class)/.test(text.slice(start, start + 40));
  let depth = 0;
  for (const token of tokensFrom(text, start)) {
    if ("({[".includes(token.text)) depth++;
    else if (")}]".includes(token.text)) {
      depth--;
      if (braced && depth === 0 && token.text === "}") return token.end;
    } else if (token.text === ";" && depth === 0) return token.end;
  }
  return text.length;
}

/** Brackets and semicolons outside comments and quoted texts. */
function* tokensFrom(
  text: string,
  start: number,
): Generator<{ readonly text: string; readonly end: number }> {
  const pattern =
    /\/\*[\s\S]*?\*\/|\/\/[^\n]*|"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*'|`(?:\\.|[^`\\])*`|[(){}[\];]/g;
  pattern.lastIndex = start;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    if (match[0].length === 1) yield { text: match[0], end: pattern.lastIndex };
  }
}

function commentBefore(text: string, end: number): string {
  const before = text.slice(0, end).trimEnd();
  if (!before.endsWith("*/")) return "";
  const start = before.lastIndexOf("/*");
  if (!before.startsWith("/**", start)) return "";
  return before
    .slice(start + 3, -2)
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .trim();
}
