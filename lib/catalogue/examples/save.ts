// What refusals of a save may be said with.

import type { Examples } from "../example.ts";

const name = "my-trial.yaml";

export const save: Examples = {
  "save/broken-text": { name },
  "save/busy": { name },
  "save/disk-full": { name },
  "save/half-way": {
    cause: `${name} is not saved: the disk is full. The file is as it was.`,
    remedy: "Make room and save again.",
    saved: "waters.csv",
    several: false,
  },
  "save/no-file": { name },
  "save/not-utf8": { name },
  "save/otherwise": {
    why: `${name} cannot be written: the device does not answer.`,
    remedy: "Look at its cable.",
  },
  "save/read-only": { name },
  "save/read-only-disk": { name },
  "save/strange-files": { log: name },
  "save/too-long": { name },
  "save/vanished": { name },
};
