// Invented logs for the command line.

/** One sieving of 50.0 g; its rows are given as lines. */
export function logWith(...rows: readonly string[]): string {
  return `format: 1
title: An invented log
invented: yes
scales:
  small scale: { reads to: 0.01 g }
sands:
  Dune sand:
    state: new
    sievings:
      - date: 2026-03-02
        scale: small scale
        start: 50.0 g
        retained:
${rows.map((row) => `          ${row}\n`).join("")}`;
}

/** 3.20 + 12.60 + 20.10 + 12.00 + 1.90 + 0.15 = 49.95 g. */
export const soundRows = [
  "No. 40: 3.20",
  "No. 50: 12.60",
  "No. 70: 20.10",
  "No. 100: 12.00",
  "No. 140: 1.90",
  "pan: 0.15",
];
