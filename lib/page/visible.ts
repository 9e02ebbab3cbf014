// Text from a log as it may be shown: nothing in it can hide, turn the line round, or break a file.

import type { Inline, Text } from "./blocks.ts";

// Control characters but tab and line ends; soft hyphen; marks that turn or hide text; line and paragraph
// separators; tag characters. Joiners (U+200C, U+200D) stay: scripts and emoji need them.
const HIDDEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]/gu;
const PLAIN = /^[\t\n\r -~]*$/;
const LONE_SURROGATE = /\p{Surrogate}/gu;

/** A character that would not be seen, as a code that is: "⟨U+202E⟩". */
function code(character: string): string {
  return `⟨U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}⟩`;
}

/**
 * The text with hidden and bidirectional control characters written as codes and broken surrogates as U+FFFD.
 * Tabs and line ends are kept.
 * @example visible("No.\u202e40")  // "No.⟨U+202E⟩40"
 */
export function visible(text: string): string {
  // Most of what a page and its drawings say, a thousand times over.
  if (PLAIN.test(text)) return text;
  return text.replace(LONE_SURROGATE, "\ufffd").replace(HIDDEN, code);
}

/** All of those scripts stand behind it, and most texts hold nothing that does. */
const BEYOND_GREEK = /[\u0590-\uffff]/;
const TO_THE_LEFT =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}](?:[ \t'’"׳״-]*[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}])*/gu;

/**
 * The text with its words of a script that runs to the left held by themselves (first strong isolate, UAX #9): what
 * stands behind them, such as a figure, stays behind them. Other texts are as they were. After visible(), not before it.
 */
export function isolated(text: string): string {
  if (!BEYOND_GREEK.test(text)) return text;
  return text.replace(TO_THE_LEFT, "\u2068$&\u2069");
}

/** A JSON text in which hidden characters stand as JSON's own codes: it reads back as it was, and hides nothing. */
export function hiddenAsCodes(json: string): string {
  return json.replace(HIDDEN, (character) =>
    character
      .split("")
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`)
      .join(""),
  );
}

/** visible() on one line: runs of white space become one space, ends are trimmed. */
export function visibleLine(text: string): string {
  return visible(text).replace(/\s+/g, " ").trim();
}

/** The pieces of a text; a plain string is one piece. */
export function pieces(text: Text): readonly Inline[] {
  return typeof text === "string" ? [text] : text;
}

/** The words of a text without emphasis. */
export function plainText(text: Text): string {
  return pieces(text)
    .map((piece) => {
      if (typeof piece === "string") return piece;
      if ("code" in piece) return piece.code;
      return "strong" in piece ? piece.strong : piece.em;
    })
    .join("");
}

/**
 * A sentence as a page's text: what stands between two back-ticks is set as it is typed in a file.
 * @example textWithCode("Write `washed: yes`.") // ["Write ", { code: "washed: yes" }, "."]
 */
export function textWithCode(text: string): Text {
  return codePieces(text).map(({ words, code }) => (code ? { code: words } : words));
}

/** Words and, between two back-ticks on one line, what is written so in a file: "Write `pan:` last." */
export function codePieces(text: string): { readonly words: string; readonly code: boolean }[] {
  return text
    .split(/`([^`\n]+)`/)
    .map((words, i) => ({ words, code: i % 2 === 1 }))
    .filter(({ words }) => words !== "");
}
