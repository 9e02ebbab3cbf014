// What can be wrong with the heap of a log.

import { issueMessage } from "../message.ts";

const example = "`heap: { mass: 120 kg ± 5 kg }` or `heap: { buckets: 11, bucket: 10.8 kg ± 0.3 kg }`";

export const heapWithoutMass = issueMessage("log/heap-without-mass", "warning", () => ({
  message:
    "The heap has neither a mass nor a count of buckets with the mass of one, so no amount for it can be worked out.",
  remedy: `Write ${example}.`,
}));

export const heapTwice = issueMessage("log/heap-twice", "warning", () => ({
  message: "The heap has a mass, and buckets as well; the mass is read.",
  remedy: `Write one of the two: ${example}.`,
}));

export const bucketsNotWhole = issueMessage("log/buckets-not-whole", "error", (text: string) => ({
  message: `"${text}" is no whole number of buckets, so the mass of the heap is not worked out.`,
  remedy: "Count the full ones, weigh what is left over, and write the sum as `mass: ... kg`.",
}));

export const moreWeighedThanThere = issueMessage(
  "log/more-weighed-than-there",
  "error",
  (weighed: string, count: string) => ({
    message: `${weighed} buckets were weighed, but the heap is ${count === "1" ? "one bucket" : `${count} buckets`} in all.`,
    remedy: "Write all buckets of the heap as `buckets`, those that were weighed among them.",
  }),
);

export const bucketBelowEmpty = issueMessage(
  "log/bucket-below-empty",
  "error",
  (bucket: string, empty: string) => ({
    message: `A bucket with sand weighs "${bucket}", the empty one "${empty}".`,
    remedy:
      "Where `empty` is given, `bucket` is weighed with its sand in it; leave `empty` out if the scale was set to zero with it.",
  }),
);
