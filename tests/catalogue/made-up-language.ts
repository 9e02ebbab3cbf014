// A language in which every word is English with a mark before it; what a message is said with stays as it is.

import { type AnyMessage, allCautions, allMessages } from "../../lib/catalogue/messages.ts";
import type { Words } from "../../lib/index.ts";

const MARK = "¤";
const word = /(?<![\p{L}\d¤])\p{L}[\p{L}'’]*/gu;

/** Every word of it with the mark. */
export const marked = (text: string): string => text.replace(word, `${MARK}$&`);
export const unmarked = (text: string): string => text.replaceAll(MARK, "");
/** The words of English that are left in it: two letters or more. */
export const leftIn = (text: string): string[] => (text.match(word) ?? []).filter((one) => one.length > 1);

/** The texts among what a message is said with, the longest first. */
function textsIn(said: unknown): string[] {
  if (typeof said === "string") return said.trim() === "" ? [] : [said];
  if (typeof said !== "object" || said === null) return [];
  return Object.values(said)
    .flatMap(textsIn)
    .sort((a, b) => b.length - a.length);
}

/** What stands between those texts is marked, they are not. */
function markedAround(text: string, said: readonly unknown[]): string {
  const texts = textsIn(said).map((one) => one.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  if (texts.length === 0) return marked(text);
  const within = new RegExp(`(?<![\\p{L}\\d])(${texts.join("|")})(?![\\p{L}\\d])`, "giu");
  return text
    .split(within)
    .map((part, k) => (k % 2 === 0 ? marked(part) : part))
    .join("");
}

function fieldsOf(message: AnyMessage, said: readonly unknown[]): unknown {
  const thing = (message as unknown as (...said: readonly unknown[]) => unknown)(...said);
  const turned = (value: unknown): unknown => {
    if (typeof value === "string") return markedAround(value, said);
    return Array.isArray(value) ? value.map(turned) : value;
  };
  if (message.kind === "phrase") return turned(String(thing));
  const { text, because, formula, source, message: sentence, remedy } = thing as { [name: string]: unknown };
  const fields = { text, because, formula, source, message: sentence, remedy };
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (value === undefined ? [] : [[name, turned(value)]])),
  );
}

/** Every code there is. */
export const madeUp: Words = Object.fromEntries([
  ...allMessages.map((one) => [one.code, (...said: readonly unknown[]) => fieldsOf(one, said)]),
  ...allCautions.map(({ code, trigger, text, points, defers }) => [
    code,
    () => ({
      trigger: marked(trigger),
      text: marked(text),
      points: points.map(marked),
      defers: marked(defers),
    }),
  ]),
]) as Words;
