// What can be wrong with the heap of a log.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

const example = "`heap: { mass: 120 kg ± 5 kg }` or `heap: { buckets: 11, bucket: 10.8 kg ± 0.3 kg }`";

export const heapWithoutMass = (): Issue =>
  issue(
    "warning",
    "heap-without-mass",
    "The heap has neither a mass nor a count of buckets with the mass of one, so no amount for it can be worked out.",
    `Write ${example}.`,
  );

export const heapTwice = (): Issue =>
  issue(
    "warning",
    "heap-twice",
    "The heap has a mass, and buckets as well; the mass is read.",
    `Write one of the two: ${example}.`,
  );

export const bucketsNotWhole = (text: string): Issue =>
  issue(
    "error",
    "buckets-not-whole",
    `"${text}" is no whole number of buckets, so the mass of the heap is not worked out.`,
    "Count the full ones, weigh what is left over, and write the sum as `mass: ... kg`.",
  );

export const moreWeighedThanThere = (weighed: string, count: string): Issue =>
  issue(
    "error",
    "more-weighed-than-there",
    `${weighed} buckets were weighed, but the heap is ${count} buckets in all.`,
    "Write all buckets of the heap as `buckets`, those that were weighed among them.",
  );

export const bucketBelowEmpty = (bucket: string, empty: string): Issue =>
  issue(
    "error",
    "bucket-below-empty",
    `A bucket with sand weighs "${bucket}", the empty one "${empty}".`,
    "Where `empty` is given, `bucket` is weighed with its sand in it; leave `empty` out if the scale was set to zero with it.",
  );
