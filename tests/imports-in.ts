// What a script imports, read token by token, so that comments, texts and patterns neither hide an import nor look like one.

/** An import whose target is worked out when it runs. */
export const workedOut = "(worked out)";

/** Targets of every import, export from, import() and require() of a TypeScript file, types included. */
export function importsIn(script: string): string[] {
  const list = tokensOf(script);
  const found: string[] = [];
  list.forEach(({ kind, text }, i) => {
    if (kind !== "word" || list[i - 1]?.text === ".") return;
    const [next, further, last] = list.slice(i + 1, i + 4);
    if ((text === "from" || text === "import") && next?.kind === "text") found.push(next.text);
    if ((text === "import" || text === "require") && next?.kind === "sign" && next.text === "(") {
      const plain = further?.kind === "text" && (last?.text === ")" || last?.text === ",");
      found.push(plain ? further.text : workedOut);
    }
  });
  // A way to node's modules that is no import.
  if (list.some(({ kind, text }) => kind !== "sign" && text === "getBuiltinModule"))
    found.push(`node:${workedOut}`);
  return found;
}

interface Token {
  readonly kind: "word" | "text" | "sign";
  readonly text: string;
}

const passedOver = /(?:\s+|\/\/.*|\/\*[\s\S]*?\*\/)+/y;
const word = /[\p{ID_Continue}$]+/uy;
const quoted = /"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'/y;
const pattern = /\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/[\\\n])+\/[a-z]*/y;
/** From a backtick, or from the end of an insertion, to the next insertion or the end. */
const templatePart = /[`}](?:\\[\s\S]|\$(?!\{)|[^`\\$])*(?:`|\$\{)/y;
/** After these words a slash begins a pattern; after any other word, a number or a bracket's end it divides. */
const beforePattern =
  /^(?:return|typeof|case|in|of|await|void|delete|instanceof|new|else|do|throw|yield|default)$/;

function tokensOf(script: string): Token[] {
  const list: Token[] = [];
  /** For each open brace, whether it began an insertion into a template. */
  const braces: boolean[] = [];
  let at = 0;
  const taken = (what: RegExp): string | undefined => {
    what.lastIndex = at;
    const text = what.exec(script)?.[0];
    if (text !== undefined) at += text.length;
    return text;
  };
  while (at < script.length) {
    if (taken(passedOver) !== undefined) continue;
    const sign = script[at]!;
    const isInsertionEnd = sign === "}" && braces.pop() === true;
    if (sign === "`" || isInsertionEnd) {
      const part = taken(templatePart);
      if (part === undefined) throw new Error(`a template is not closed: ${script.slice(at, at + 60)}`);
      if (part.endsWith("${")) braces.push(true);
      // A template with insertions is worked out when it runs: it ends as a sign.
      const isPlain = !isInsertionEnd && part.endsWith("`");
      list.push(isPlain ? { kind: "text", text: part.slice(1, -1) } : { kind: "sign", text: "`" });
      continue;
    }
    const text = taken(quoted);
    if (text !== undefined) {
      list.push({ kind: "text", text: text.slice(1, -1) });
      continue;
    }
    if (sign === '"' || sign === "'") throw new Error(`a text is not closed: ${script.slice(at, at + 60)}`);
    const name = taken(word);
    if (name !== undefined) {
      list.push({ kind: "word", text: name });
      continue;
    }
    const before = list.at(-1);
    const divides = before?.kind === "word" ? !beforePattern.test(before.text) : isEnd(before);
    if (sign === "/" && !divides && taken(pattern) !== undefined) {
      list.push({ kind: "text", text: "" });
      continue;
    }
    if (sign === "{") braces.push(false);
    list.push({ kind: "sign", text: sign });
    at++;
  }
  return list;
}

function isEnd(before: Token | undefined): boolean {
  return before !== undefined && (before.kind === "text" || /^[)\]}`]$/.test(before.text));
}
