// The founder's log, from its text to figures with places.

import { type Checked, type Issue, invariant, type Place } from "../issue.ts";
import { checkDepth, checkText } from "./check-text.ts";
import { noSands, notALog } from "./complaints-file.ts";
import type { Files } from "./csv-file.ts";
import { fieldsOf, mapOf, uniqueEntries } from "./fields.ts";
import { filesUsed } from "./files-named.ts";
import { fingerprint } from "./fingerprint.ts";
import { logKeys, sandKeys } from "./log-keys.ts";
import type { MapNode, Report } from "./node.ts";
import { parseLog } from "./parse-log.ts";
import { checkFormat, readHead } from "./read-head.ts";
import { readScales, readSieveSets } from "./read-rig.ts";
import { readSand } from "./read-sand.ts";
import { readTrial } from "./read-trial.ts";
import { blockAt, sandBlocks } from "./sand-blocks.ts";
import { holds, lineText, placeIn, type Source, sourceOf } from "./source.ts";
import type { Log, Sand } from "./types.ts";

export interface ReadLogOptions {
  /** Of the file, for places: "my-sands.yaml". */
  readonly name: string;
  /** Texts of the CSV files beside the log, by name; filesNamedIn tells which. */
  readonly files?: Files;
}

/**
 * Reads a log (YAML, format 1). Pure: CSV files beside the log are handed in.
 *
 * Everything that is wrong becomes an issue with file, line, column and remedy; a fault in one sand leaves the others.
 * No value: the text is no log at all, or one of a newer format. Throws only where the text is not a string.
 *
 *     const { value, issues } = readLog(text, { name: "my-sands.yaml" });
 *     value?.sands[0]?.sievings[0]?.retained[0]?.mass.value   // 0.15
 */
export function readLog(text: string, options: ReadLogOptions): Checked<Log> {
  invariant(typeof text === "string", "readLog reads a text, not a file name's bytes or an object.");
  const { name, files = {} } = options;
  const source = sourceOf(name, text);
  const issues: Issue[] = [];

  // 1. Is it text, of a size and depth that can be read?
  const aboutFile = reportTo(issues, () => undefined);
  if (!checkText(source, aboutFile) || !checkDepth(source, aboutFile)) return { issues };

  // 2. From text to nodes; a fault spoils its line, or at worst its sand.
  const blocks = sandBlocks(source);
  const aboutBlock = reportTo(issues, (place) => blockAt(blocks, place.offset)?.name);
  const parsed = parseLog(source, blocks);
  for (const { complaint, place } of parsed.complaints) aboutBlock(complaint, place);
  const errors = issues.filter((issue) => issue.severity === "error");
  const spoiled = spoiledBy(errors, source, (place) => blockAt(blocks, place.offset)?.end);
  if (parsed.root.kind !== "map") {
    if (errors.length === 0) aboutFile(notALog(), placeIn(source, 0, 1));
    return { issues };
  }

  // 3. From nodes to the log: head, rig, sand by sand, then batch by batch.
  const root: MapNode = parsed.root;
  const fields = fieldsOf(root, logKeys, "in a log", aboutFile);
  if (!checkFormat(fields, root, aboutFile)) return { issues };
  const head = readHead(fields, aboutFile);
  const scales = readScales(fields.get("scales"), aboutFile);
  const sets = readSieveSets(fields.get("sieve sets"), aboutFile);
  const rig = { scales, sets, scaleSection: fields.get("scales"), setSection: fields.get("sieve sets") };
  const sandMap = mapOf(fields.get("sands"), "sands", aboutFile);
  const entries = sandMap ? uniqueEntries(sandMap, aboutFile) : [];
  const unsaid = fields.get("sands") === undefined || sandMap !== undefined;
  const tried = fields.get("batches") !== undefined || fields.get("batches file") !== undefined;
  if (unsaid && !tried && entries.length === 0 && blocks.length === 0)
    aboutFile(noSands(), fields.entry("sands")?.keyPlace ?? placeIn(source, 0, 1));
  const blockSpoiled = (place: Place) => {
    const block = blockAt(blocks, place.offset);
    return block !== undefined && errors.some((issue) => blockAt(blocks, issue.place?.offset) === block);
  };
  const reportAbout = (name: string) => reportTo(issues, () => name);
  const context = { rig, files, spoiled, sandSpoiled: blockSpoiled };
  const sands: Sand[] = entries.flatMap(
    (entry) => readSand(entry, context, reportAbout(entry.key.trim())) ?? [],
  );
  const trial = readTrial(fields, {
    files,
    scales,
    sands: entries.map(({ key }) => key.trim()),
    spoiled: ({ keyPlace }) => blockSpoiled(keyPlace),
    report: aboutFile,
    reportAbout,
  });

  // 4. One list of issues in file order, and a fingerprint of all that was read.
  const log: Log = {
    format: 1,
    file: name,
    ...head,
    scales,
    sets,
    sands,
    ...trial,
    fingerprint: fingerprint(text, ...filesUsed(root, files)),
  };
  return { value: frozen(log), issues: inOrder(issues, name) };
}

/** A line that could not be read is no part of the node any more: what stands below it, in the same sand, counts as well. */
function spoiledBy(
  errors: readonly Issue[],
  source: Source,
  endOf: (place: Place) => number | undefined,
): (place: Place, until?: number) => boolean {
  const apart = new RegExp(`^\\s*(-|(${sandKeys.join("|")})\\s*:)`, "i");
  return (place, until = endOf(place) ?? 0) =>
    errors.some(({ place: at }) => {
      if (holds(place, at)) return true;
      if (at?.offset === undefined || at.offset < (place.offset ?? 0) || at.offset >= until) return false;
      return !apart.test(lineText(source, (at.line ?? 1) - 1));
    });
}

function reportTo(issues: Issue[], aboutOf: (place: Place) => string | undefined): Report {
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
function inOrder(issues: readonly Issue[], name: string): Issue[] {
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

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) frozen(part);
  }
  return value;
}
