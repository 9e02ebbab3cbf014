// Old British mesh numbers (BS 410 before it went over to openings). All from memory.

/** Mesh number and opening in mm, coarse to fine. */
export const britishSieves: readonly { readonly number: number; readonly openingMm: number }[] =
  Object.freeze(
    (
      [
        [5, 3.35],
        [6, 2.8],
        [7, 2.4],
        [8, 2.0],
        [10, 1.68],
        [12, 1.4],
        [14, 1.2],
        [16, 1.0],
        [18, 0.85],
        [22, 0.71],
        [25, 0.6],
        [30, 0.5],
        [36, 0.425],
        [44, 0.355],
        [52, 0.3],
        [60, 0.25],
        [72, 0.212],
        [85, 0.18],
        [100, 0.15],
        [120, 0.125],
        [150, 0.106],
        [170, 0.09],
        [200, 0.075],
        [240, 0.063],
        [300, 0.053],
        [350, 0.045],
      ] as const
    ).map(([number, openingMm]) => Object.freeze({ number, openingMm })),
  );
