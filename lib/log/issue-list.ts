// The issues of a log: gathered with their places, then put in the order of the file.

import type { Issue, Place } from "../issue.ts";
import type { Report } from "./node.ts";

export function reportTo(issues: Issue[], aboutOf: (place: Place) => string | undefined): Report {
  return (complaint, place) => {
    const about = aboutOf(place);
    issues.push({
      ...complaint,
      message: clipped(complaint.message),
      place,
      ...(about === undefined ? {} : { about }),
    });
  };
}

/** A message quotes what stands in the file, which may be a page long. */
function clipped(message: string): string {
  return message.length <= 600 ? message : `${message.slice(0, 400)} ... ${message.slice(-150)}`;
}

/** The log's own issues by line, then those of CSV files; the same one twice counts once. */
export function inFileOrder(issues: readonly Issue[], name: string): Issue[] {
  const keyed = new Map(
    issues.map((issue) => [
      `${issue.code} ${issue.place?.file} ${issue.place?.offset} ${issue.message}`,
      issue,
    ]),
  );
  const rank = (issue: Issue) => (issue.place?.file === name ? 0 : 1);
  return [...keyed.values()].sort(
    (a, b) => rank(a) - rank(b) || (a.place?.offset ?? 0) - (b.place?.offset ?? 0),
  );
}
