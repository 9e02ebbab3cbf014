// A log's text, once it is known to be text, to the log: parse, head, rig, sand by sand, batch by batch, the heap and its season.

import type { Issue, Place } from "../issue.ts";
import { noSands, notALog, secondLog } from "./complaints-file.ts";
import { sandAtMargin } from "./complaints-sieving.ts";
import type { Files } from "./csv-file.ts";
import { type Fields, fieldsOf, mapOf, nearKey, uniqueEntries } from "./fields.ts";
import { filesUsed } from "./files-named.ts";
import { fingerprint } from "./fingerprint.ts";
import { heapSectionKeys } from "./heap-keys.ts";
import { reportTo } from "./issue-list.ts";
import { logKeys, sandKeys } from "./log-keys.ts";
import { type Entry, isHoled, type MapNode, type PlacedComplaint, plainName, type Report } from "./node.ts";
import { parseLog } from "./parse-log.ts";
import { readExperiment } from "./read-experiment.ts";
import { checkFormat, readHead } from "./read-head.ts";
import { readHeapSections } from "./read-heap-sections.ts";
import { readScales, readSieveSets } from "./read-rig.ts";
import { readSand } from "./read-sand.ts";
import { readSheets } from "./read-sheets.ts";
import { readTrial } from "./read-trial.ts";
import type { ReadingMemory } from "./reading-memory.ts";
import { blockAt, sandBlocks } from "./sand-blocks.ts";
import { holds, lineText, placeIn, type Source } from "./source.ts";
import type { Log, Sand } from "./types.ts";

export interface ToRead {
  readonly source: Source;
  /** As the founder typed it, for the fingerprint and to hand on. */
  readonly typed: Source;
  readonly files: Files;
  /** What is known to be wrong already. */
  readonly complaints: readonly PlacedComplaint[];
  /** Of the log before an edit. */
  readonly memory?: ReadingMemory | undefined;
}

/** What is wrong is added to the issues; undefined where the text is no log, or one of a newer format. */
export function readSource(
  { source, typed, files, complaints, memory }: ToRead,
  issues: Issue[],
): Log | undefined {
  const aboutFile = reportTo(issues, () => undefined);

  // 1. From text to nodes; a fault spoils its line, or at worst its sand.
  const blocks = sandBlocks(source);
  const aboutBlock = reportTo(issues, (place) => blockAt(blocks, place.offset)?.name);
  const parsed = parseLog(source, blocks, memory?.pieces);
  for (const { complaint, place } of [...complaints, ...parsed.complaints]) aboutBlock(complaint, place);
  const errors = issues.filter((issue) => issue.severity === "error");
  const lost = (source.lost ?? []).map((start) => placeIn(source, start));
  const faulty = [...errors.flatMap(({ place }) => place ?? []), ...lost];
  const spoiled = spoiledBy(faulty, source, (place) => blockAt(blocks, place.offset)?.end);
  if (parsed.root.kind !== "map") {
    if (errors.length === 0) aboutFile(notALog(), placeIn(source, 0, 1));
    return undefined;
  }

  // 2. From nodes to the log: head, rig, sand by sand, then batch by batch.
  const root = ownEntries(parsed.root, aboutFile);
  const fields = fieldsOf(root, logKeys, "in a log", aboutFile);
  if (!checkFormat(fields, root, aboutFile)) return undefined;
  const head = readHead(fields, root, aboutFile);
  const scales = readScales(fields.get("scales"), aboutFile);
  const sets = readSieveSets(fields.get("sieve sets"), aboutFile);
  const rig = {
    scales,
    sets,
    scaleSection: fields.section("scales"),
    setSection: fields.section("sieve sets"),
  };
  const sandMap = mapOf(fields.get("sands"), "sands", aboutFile);
  const entries = sandMap ? uniqueEntries(sandMap, aboutFile) : [];
  if (entries.length === 0 && blocks.length === 0 && saysNothing(root, fields))
    aboutFile(noSands(), fields.entry("sands")?.keyPlace ?? placeIn(source, 0, 1));
  const blockSpoiled = (place: Place) => {
    const block = blockAt(blocks, place.offset);
    return block !== undefined && faulty.some(({ offset }) => blockAt(blocks, offset) === block);
  };
  const reportAbout = (name: string) => reportTo(issues, () => name);
  const context = { rig, files, spoiled, sandSpoiled: blockSpoiled };
  const sands: Sand[] = entries.flatMap(
    (entry) => readSand(entry, context, reportAbout(entry.key.trim())) ?? [],
  );
  // Where lines of sands could not be read, any name may be one of them.
  const sandNames = isHoled(fields.section("sands")) ? [] : entries.map(({ key }) => key.trim());
  const trial = readTrial(fields, {
    files,
    scales,
    sands: sandNames,
    spoiled: ({ keyPlace }) => blockSpoiled(keyPlace),
    report: aboutFile,
    reportAbout,
    memory: memory?.batches,
  });
  const experiment = readExperiment(fields.entry("experiment"), trial.batches, aboutFile, reportAbout);
  const season = readHeapSections(fields, { sands: sandNames, heapKg: trial.heapKg }, aboutFile);
  const sheets = readSheets(fields.get("sheets"), {
    source,
    files,
    scales,
    scaleSection: fields.section("scales"),
    spoiled: ({ keyPlace }) => blockSpoiled(keyPlace),
    report: aboutFile,
    reportAbout,
  });

  const used = filesUsed(root, files);
  return {
    format: 1,
    file: source.file,
    ...head,
    scales,
    sets,
    sands,
    ...trial,
    sheets,
    ...(experiment ? { experiment } : {}),
    ...season,
    fingerprint: fingerprint(typed.text, ...used.flatMap(({ name, text }) => [name, text])),
    texts: [{ name: typed.file, text: typed.text }, ...used],
  };
}

/**
 * The log's own entries: what is pasted below it, from the second `format` or the third repeated name on, is a second log;
 * and a sand that slipped to the left margin is told as one.
 */
function ownEntries(node: MapNode, report: Report): MapNode {
  const first = new Map<string, Entry>();
  const again: Entry[] = [];
  for (const entry of node.entries) {
    const name = plainName(entry.key);
    if (first.has(name)) again.push(entry);
    else first.set(name, entry);
  }
  const start =
    again.find(({ key }) => plainName(key) === "format") ?? (again.length > 2 ? again[0] : undefined);
  const from = start ? node.entries.indexOf(start) : node.entries.length;
  if (start && again.length > 1) {
    const names = again
      .slice(0, 3)
      .map(({ key }) => `"${key}"`)
      .join(", ");
    const line = first.get(plainName(start.key))!.keyPlace.line;
    report(secondLog(names, String(line)), start.keyPlace);
  }
  const own = start && again.length > 1 ? node.entries.slice(0, from) : node.entries;
  const entries = own.filter((entry) => !sandAt(entry, report));
  return { ...node, entries };
}

function sandAt({ key, keyPlace, value }: Entry, report: Report): boolean {
  const isSand =
    value.kind === "map" &&
    !logKeys.includes(plainName(key)) &&
    value.entries.some((entry) => /^sievings( file)?$/.test(plainName(entry.key)));
  if (isSand) report(sandAtMargin(key), keyPlace);
  return isSand;
}

/** Neither sands nor batches nor sheets, nor anything of a heap: not even under a misspelt name, or on lines that could not be read. */
function saysNothing(root: MapNode, fields: Fields): boolean {
  const sections = ["sands", "batches", "batches file", "sheets", "experiment", ...heapSectionKeys];
  if (isHoled(root) || sections.slice(1).some((section) => fields.get(section) !== undefined)) return false;
  const sands = fields.get("sands");
  if (sands) return sands.kind === "map" && !isHoled(sands);
  return !root.entries.some(({ key }) => nearKey(key, sections) !== undefined);
}

/** A line that could not be read is no part of the node any more: what stands below it, in the same sand, counts as well. */
function spoiledBy(
  faulty: readonly Place[],
  source: Source,
  endOf: (place: Place) => number | undefined,
): (place: Place, until?: number) => boolean {
  const apart = new RegExp(`^\\s*(-|(${sandKeys.join("|")})\\s*:)`, "i");
  return (place, until = endOf(place) ?? 0) =>
    faulty.some((at) => {
      if (holds(place, at)) return true;
      if (at.offset === undefined || at.offset < (place.offset ?? 0) || at.offset >= until) return false;
      return !apart.test(lineText(source, (at.line ?? 1) - 1));
    });
}
