// A comment in its parts: paragraphs, and examples as they are typed.

export interface CommentPart {
  /** lead: what it computes; source; example: typed as it stands; prose: all else. */
  readonly kind: "lead" | "prose" | "source" | "example";
  readonly text: string;
}

interface Open {
  readonly kind: CommentPart["kind"];
  readonly code: boolean;
  readonly lines: string[];
}

const HEAD = /^(Sources?|Method|Example|Certified digits)\b[^:]{0,40}:/;
const ARGUMENT = /^[a-z][A-Za-z0-9]*(, [a-z][A-Za-z0-9]*)*: /;
const CODE = /^ {4}/;

/**
 * Lines are joined to paragraphs; a blank line, "name: …" of an argument, and "Source:" begin a new one. What stands
 * after @example, and lines that are set in, are examples and keep their lines.
 */
export function commentParts(comment: string): readonly CommentPart[] {
  const [before, ...examples] = comment.split(/^@example\b[ \t]*/m);
  const parts: Open[] = [];
  // An example may follow on the line of the source.
  for (const line of before!.replace(/(?<=\.) (?=Example: )/g, "\n").split("\n")) {
    const last = parts.at(-1);
    const code = CODE.test(line);
    const goesOn =
      last && line !== "" && last.code === code && (code || !(HEAD.test(line) || ARGUMENT.test(line)));
    if (goesOn) last.lines.push(line);
    else parts.push({ kind: kindOf(line, code, parts.length === 0), code, lines: line === "" ? [] : [line] });
  }
  const told = parts
    .filter(({ lines }) => lines.length > 0)
    .map(({ kind, code, lines }): CommentPart => ({ kind, text: code ? undented(lines) : joined(lines) }));
  return [...told, ...examples.map((text): CommentPart => ({ kind: "example", text: text.trim() }))];
}

function kindOf(line: string, code: boolean, first: boolean): CommentPart["kind"] {
  const head = HEAD.exec(line)?.[1];
  if (code || head === "Example") return "example";
  if (head !== undefined) return "source";
  return first ? "lead" : "prose";
}

function undented(lines: readonly string[]): string {
  return lines.map((line) => line.slice(4)).join("\n");
}

/** A line that is set in a little goes on with code, and stays a line. */
function joined(lines: readonly string[]): string {
  return lines.reduce((all, line) => `${all}${/^\s{2,}/.test(line) ? "\n" : " "}${line}`);
}
