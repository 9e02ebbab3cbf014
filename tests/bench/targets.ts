// What the library holds itself to, each target once; a row of the benchmark says which of them it tells of.

export const targets = {
  coverage:
    "coverage: 95 % intervals hold the truth in 93 to 97 of 100, a chance of 70 % comes true in 65 to 75",
  "fineness, 4,096 draws": "fineness with its ±, 4,096 draws, against numpy's 1e5 plain draws: ≤ 0.1 ×",
  "fineness, 65,536 draws": "the same by 65,536 draws: ≤ 1 ×",
  sheet: "sheet of 200 rows and 8 formulas, ± on every input, warm: ≤ one frame at 60 Hz",
  formula: "formula over 1e6 rows, no ±, against a loop by hand: ≤ 4 ×",
  "live edit": "live page, edit until all that is shown is right: ≤ 50 ms",
  "live edit, slowed": "the same at 360 px, everything 4 × slower: ≤ 150 ms",
  shown: "page shows its charts after opening, against its drawings alone: ≤ 1.5 ×",
  "print size": "print page in one file: ≤ 150 KB",
  "live size": "live page in one file: ≤ 900 KB",
  check: "mullbook check of a small log, against node -e 0: ≤ 3 ×",
  write: "mullbook write of one notebook, against node -e 0: ≤ 12 ×",
  season: "a season of 60 pours, every page: ≤ 2 s",
  "long log, time": "a log of 2,000 batches, against 200: ≤ 12 ×",
  "long log, memory": "the log of 2,000 batches: ≤ 400 MB",
} as const satisfies { readonly [name: string]: string };
export type Target = keyof typeof targets;
