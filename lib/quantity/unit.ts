// A unit, read once; numbers after.

/** Exponents of mass, length, time, temperature. */
export type Dimension = readonly [mass: number, length: number, time: number, temperature: number];

export interface Unit {
  /** In the library's spelling: "g", "kg/m³", "°F", "% of dry mix". */
  readonly text: string;
  readonly dimension: Dimension;
  /** Value in SI = value × factor + offset. */
  readonly factor: number;
  /** Only for absolute temperatures. */
  readonly offset: number;
  /** A temperature difference is not a temperature; percent is a label, not algebra. */
  readonly kind: "plain" | "temperature" | "temperature difference" | "percent";
  /** For percent: of what ("damp mass", "dry mix", "sand", "height", "sample"); undefined: not said. */
  readonly of?: string;
}
