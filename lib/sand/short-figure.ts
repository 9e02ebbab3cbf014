// Figures as messages print them.

/** Three figures, without an exponent for the sizes, masses and shares that occur here. */
export const short = (x: number): string => String(Number(x.toPrecision(3)));
export const grams = (x: number): string => `${short(x)} g`;
export const millimetres = (x: number): string => `${short(x)} mm`;
