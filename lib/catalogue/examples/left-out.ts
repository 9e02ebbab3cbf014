// What messages on batches left out may be said with.

import type { Examples } from "../example.ts";

export const leftOut: Examples = {
  "trial/answered-without": { batches: "W3", why: "a dry tube" },
  "trial/kept-out": {
    batches: "W3",
    many: false,
    why: "a dry tube",
    withThem: "With it the aim would be 3.44 % of damp mass, without it 3.41.",
  },
  "trial/kept-out-aim": { many: false, counted: "3.44", now: "3.41", axis: "% of damp mass" },
  "trial/kept-out-aim-only-with": { many: false, counted: "3.44", axis: "% of damp mass" },
  "trial/kept-out-aim-only-without": { many: false },
  "trial/kept-out-no-aim": { many: false },
};
