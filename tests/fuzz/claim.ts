// What a property claims of a case; the runner and the tests show the message with the case that broke it.

export function claim(holds: unknown, says: string | (() => string)): asserts holds {
  if (!holds) throw new Error(typeof says === "string" ? says : says());
}

/** Told before each step of a case, so that a hang is laid at the right door. */
export type Step = (name: string) => void;
