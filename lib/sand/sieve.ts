// A sieve, read once from its label.

export interface Sieve {
  /** In the library's spelling: "No. 40", "0.425 mm", "BS 60", "40 mesh, 0.25 mm wire". */
  readonly label: string;
  readonly series: "astm" | "iso" | "british" | "cloth";
  readonly openingMm: number;
  /** The average opening may be off by ± this many mm: the standard's tolerance, or what count and wire allow. */
  readonly toleranceMm: number;
  /** Sieve number for astm ("40") and british; undefined otherwise. */
  readonly number?: number;
}
