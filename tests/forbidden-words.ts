// Words that no page may say: nothing that Mullbook works out makes sand, mould or metal safe.

/** A promise, unless the sentence denies it in the words before. */
const PROMISES =
  /\b(safe|safely|safest|harmless|ready (?:to|for) (?:pour|pouring|melt|melting|metal|cast|casting)|(?:fit|good|all right|clear|cleared|okay?) (?:to|for) (?:pour|pouring|cast|casting)|may be poured|can be poured|(?:open|knock out|shake out) the mould now|guaranteed?|foolproof|approved|certified (?:to|for))\b/giu;
const DENIALS =
  /(?:\b(?:not|never|no|none|nothing|neither|nor|cannot|without|hardly)\b|n['’]t\b)[^.!?;:]*$/iu;
/** Promises that are made by denying the hazard, so no denial excuses them. */
const NO_HAZARD =
  /\b(?:no|without|free of|zero) (?:risk|danger|hazards?)\b|\b(?:risk|hazard|danger)-free\b/giu;

/**
 * The promises in a text that are not denied in the same sentence: none may stand in any output.
 * A founder's own words in a log are data and are not scanned.
 * @example promisesIn("The sand is safe.")      // ["safe"]
 * @example promisesIn("This does not say that it is safe.")  // []
 */
export function promisesIn(text: string): string[] {
  const flat = text.replace(/\s+/g, " ");
  const promises = [...flat.matchAll(PROMISES)].filter((match) => !DENIALS.test(flat.slice(0, match.index)));
  return [...promises, ...flat.matchAll(NO_HAZARD)].map(([words]) => words);
}
