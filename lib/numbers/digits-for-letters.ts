// Letters that were typed for digits: the letter O for zero, l and I for one.

const lookAlikes = /[OolI|]/g;
/** A run of digits, points and look-alikes that follows no letter: in "No. 5O" it is "5O", in "5 oz" there is none. */
const runs = /(?<![\p{L}\d.])[\d.OolI|]+/gu;

/**
 * The text with O and o read as 0, and l, I and | as 1, wherever they stand in one run with a digit; undefined where none
 * does. "8l" may be eight litres as well: ask only where the text as it stands cannot be read, and read the answer again.
 * @example digitsForLetters("No. 5O") // "No. 50"
 */
export function digitsForLetters(text: string): string | undefined {
  const better = text.replace(runs, (run) =>
    /\d/.test(run) ? run.replace(lookAlikes, (letter) => (/o/i.test(letter) ? "0" : "1")) : run,
  );
  return better === text ? undefined : better;
}
