// Names as a formula may write them.

/** One spelling: Unicode form C, a single space for every run of spaces and underscores. Capitals count. */
export function plainName(name: string): string {
  return name
    .normalize("NFC")
    .replace(/[\s_]+/gu, " ")
    .trim();
}

export interface KnownNames {
  /** As written, by plain spelling. */
  readonly byPlain: ReadonlyMap<string, string>;
  readonly mostWords: number;
}

export function knownNames(names: Iterable<string>): KnownNames {
  const byPlain = new Map<string, string>();
  let mostWords = 1;
  for (const name of names) {
    const plain = plainName(name);
    byPlain.set(plain, name);
    mostWords = Math.max(mostWords, plain.split(" ").length);
  }
  return { byPlain, mostWords };
}

export interface Word {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const letterRun = /[\p{L}_][\p{L}\p{M}\p{Nd}_]*/uy;
const furtherRun = /[\s\u00a0]+([\p{L}\p{Nd}_][\p{L}\p{M}\p{Nd}_]*)/uy;

/** The words that stand from here on with nothing but spaces between them. */
export function wordsAt(text: string, from: number): readonly Word[] {
  letterRun.lastIndex = from;
  const first = letterRun.exec(text);
  if (!first) return [];
  const words: Word[] = [{ text: first[0], from, to: from + first[0].length }];
  for (;;) {
    furtherRun.lastIndex = words.at(-1)!.to;
    const next = furtherRun.exec(text);
    if (!next) return words;
    const to = furtherRun.lastIndex;
    words.push({ text: next[1]!, from: to - next[1]!.length, to });
  }
}

/** How many of the words make the longest known name, and which; undefined where none does. */
export function longestName(
  words: readonly Word[],
  known: KnownNames,
): { readonly count: number; readonly name: string } | undefined {
  // An underscore may stand for a space of the name, so that a word can hold several of its words.
  for (let count = Math.min(words.length, known.mostWords); count > 0; count--) {
    const name = known.byPlain.get(
      plainName(
        words
          .slice(0, count)
          .map((word) => word.text)
          .join(" "),
      ),
    );
    if (name !== undefined) return { count, name };
  }
  return undefined;
}
