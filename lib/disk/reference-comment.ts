// A comment in its parts: paragraphs, and examples as they are typed.

export interface CommentPart {
  /** lead: what it computes; source; example: typed as it stands; prose: all else. */
  readonly kind: "lead" | "prose" | "source" | "example";
  readonly text: string;
}

const HEADS = /^(Source|Sources|Method|Example|Certified digits)\b[^:]{0,40}:/;

/** Lines are joined to paragraphs; a blank line, "name: …" of an argument, and "Source:" begin a new one. */
export function commentParts(comment: string): readonly CommentPart[] {
  const [before, ...examples] = comment.split(/^@example\b[ \t]*/m);
  const lines = before!
    .split("\n")
    .flatMap((line) => line.replace(/(?<=\.) (?=Example: )/, "\n").split("\n"));
  const parts: { kind: CommentPart["kind"]; lines: string[] }[] = [];
  for (const line of lines) {
    const last = parts.at(-1);
    const head = HEADS.exec(line)?.[1];
    if (head !== undefined || /^[a-z][A-Za-z0-9]*(, [a-z][A-Za-z0-9]*)*: /.test(line) || !last || line === "")
      parts.push({ kind: kindOf(head, parts.length === 0), lines: line === "" ? [] : [line] });
    else last.lines.push(line);
  }
  const told = parts
    .filter((part) => part.lines.length > 0)
    .map((part): CommentPart => ({ kind: part.kind, text: joined(part.lines) }));
  return [...told, ...examples.map((text): CommentPart => ({ kind: "example", text: text.trim() }))];
}

function kindOf(head: string | undefined, first: boolean): CommentPart["kind"] {
  if (head === undefined) return first ? "lead" : "prose";
  return head === "Example" ? "example" : "source";
}

/** Indented lines are code, and stay lines. */
function joined(lines: readonly string[]): string {
  return lines.reduce((all, line) => `${all}${/^\s{2,}/.test(line) ? "\n" : " "}${line}`);
}
