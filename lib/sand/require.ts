// What a model may be called with: anything else is misuse, and throws with the name of the argument.

/*
 * In a model that draws call thousands of times a test of its own comes first: gathering the arguments under their names
 * took longer there than the model.
 */

export const isAboveZero = (value: number): boolean => value > 0 && value < Number.POSITIVE_INFINITY;

export const isFromZero = (value: number): boolean => value >= 0 && value < Number.POSITIVE_INFINITY;

export const isBelow100 = (value: number): boolean => value < 100 && value > -100;

/** Each value is a finite number above zero. */
export function requireAboveZero(name: string, values: { readonly [argument: string]: number }): void {
  for (const argument in values) {
    const value = values[argument]!;
    if (!isAboveZero(value)) throw new RangeError(`${name}: ${argument} must be above 0, got ${value}`);
  }
}

/** Each value is a finite number from zero. */
export function requireFromZero(name: string, values: { readonly [argument: string]: number }): void {
  for (const argument in values) {
    const value = values[argument]!;
    if (!isFromZero(value)) throw new RangeError(`${name}: ${argument} must be 0 or more, got ${value}`);
  }
}

/** Each value is a finite number, of either sign. */
export function requireNumber(name: string, values: { readonly [argument: string]: number }): void {
  for (const argument in values) {
    if (!Number.isFinite(values[argument]!))
      throw new RangeError(`${name}: ${argument} must be a number, got ${values[argument]}`);
  }
}

/** Each value is a percentage below 100; of either sign, so that draws about zero can be worked through. */
export function requireBelow100(name: string, values: { readonly [argument: string]: number }): void {
  for (const argument in values) {
    const value = values[argument]!;
    if (!isBelow100(value))
      throw new RangeError(`${name}: ${argument} must be a percentage below 100, got ${value}`);
  }
}
