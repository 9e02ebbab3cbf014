// Words that know which phrase they are, so that a message that holds them can be said in another language.

/** A part of a sentence with its code and what it was said with; in a template it stands for its text. */
export class Phrase {
  readonly code: string;
  readonly text: string;
  readonly said: readonly unknown[];

  constructor(code: string, text: string, said: readonly unknown[]) {
    this.code = code;
    this.text = text;
    this.said = said;
    Object.freeze(this);
  }

  toString(): string {
    return this.text;
  }
}

/** What a message may be called with: for every text a phrase may stand. */
export type Spoken<Said extends readonly unknown[]> = { readonly [K in keyof Said]: SpokenOne<Said[K]> };

export type SpokenOne<T> = string extends T
  ? T | Phrase
  : T extends boolean | number | string | undefined
    ? T
    : { readonly [K in keyof T]: SpokenOne<T[K]> };

/** The arguments with every phrase in them as its text. */
export function printed<Said extends readonly unknown[]>(said: Spoken<Said>): Said {
  return mapped(said, ({ text }) => text) as Said;
}

/** The value with every phrase in it turned into what is given for it. */
export function mapped(value: unknown, turn: (phrase: Phrase) => unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (value instanceof Phrase) return turn(value);
  if (Array.isArray(value)) return value.map((item) => mapped(item, turn));
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, mapped(item, turn)]));
}
