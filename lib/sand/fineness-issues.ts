// What can be said against a fineness number: one function a message.

import { issueMessage } from "../message.ts";

export const numberEstimated = issueMessage("sand/number-estimated", "note", (low: string, high: string) => ({
  message: `The stack lacks sieves that the fineness number is made for: by the masses alone it may be ${low} to ${high}.`,
  remedy: "Take the likely range, or add the sieve that would narrow it most.",
}));

export const likelyUnknown = issueMessage("sand/likely-unknown", "warning", () => ({
  message: "Too little of the grain curve was measured to say which fineness is likely.",
  remedy:
    "Use at least three sieves with sand on them, so that less than half of the sand stays on the top one or falls into the pan.",
}));
