// Scales and sets of sieves that the log declares.

import { nearest } from "../numbers/nearest.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { frameTooSmall, scaleWithoutStep, stepAlone, undeclared } from "./complaints-field.ts";
import { fieldsOf, mapOf, textNodeOf, textOf, uniqueEntries, yesNoOf } from "./fields.ts";
import { scaleKeys, sectionLines, sieveSetKeys } from "./log-keys.ts";
import { measuredOf } from "./measured.ts";
import { isHoled, type LogNode, plainName, type Report } from "./node.ts";
import type { Scale, SieveSet } from "./types.ts";

/** Below the 3 in (76 mm) and the 75 mm frames of ASTM E11 and ISO 3310-1 by enough for a home-made one (our own). */
const LEAST_FRAME_MM = 40;

export function readScales(node: LogNode | undefined, report: Report): Scale[] {
  const map = mapOf(node, "scales", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap((entry) => {
    const name = entry.key.trim();
    if (entry.value.kind === "text" && readQuantity(entry.value.text).value) {
      report(stepAlone(name, entry.value.text), entry.value.place);
      return [];
    }
    const body = mapOf(entry.value, name, report);
    if (!body) return [];
    const fields = fieldsOf(body, scaleKeys, `of the scale "${name}"`, report);
    const step = measuredOf(
      fields.get("reads to"),
      { what: "reads to", unit: "g", most: 10_000, aboveZero: true },
      report,
    );
    const within = measuredOf(fields.get("within"), { what: "within", unit: "g", most: 10_000 }, report);
    textOf(fields.get("note"), "note", report);
    if (!fields.get("reads to") && !fields.holed) report(scaleWithoutStep(name), entry.keyPlace);
    if (!step) return [];
    return [{ name, stepG: step.value, ...(within ? { withinG: within.value } : {}), place: entry.keyPlace }];
  });
}

export function readSieveSets(node: LogNode | undefined, report: Report): SieveSet[] {
  const map = mapOf(node, "sieve sets", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap((entry) => {
    const name = entry.key.trim();
    const body = entry.value.kind === "empty" ? undefined : mapOf(entry.value, name, report);
    const fields = body && fieldsOf(body, sieveSetKeys, `of the sieve set "${name}"`, report);
    const frame = measuredOf(
      fields?.get("frame"),
      { what: "frame", unit: "mm", most: 2000, aboveZero: true },
      report,
    );
    const small = frame !== undefined && frame.value < LEAST_FRAME_MM;
    if (small) report(frameTooSmall(frame.text), frame.place);
    const checked = yesNoOf(fields?.get("checked"), "checked", report) ?? false;
    textOf(fields?.get("note"), "note", report);
    return [{ name, checked, ...(frame && !small ? { frameMm: frame.value } : {}), place: entry.keyPlace }];
  });
}

/** The declared one of that name; otherwise reported. */
export function declared<T extends { readonly name: string }>(
  node: LogNode | undefined,
  kind: "scale" | "sieve set" | "rig" | "sand",
  known: readonly T[],
  section: LogNode | undefined,
  report: Report,
): T | undefined {
  const text = textNodeOf(node, kind, report);
  if (!text) return undefined;
  const found = known.find((item) => plainName(item.name) === plainName(text.text));
  // One whose own lines are at fault has been complained about there.
  const named =
    isHoled(section) ||
    (section?.kind === "map" &&
      section.entries.some((entry) => plainName(entry.key) === plainName(text.text)));
  if (!found && !named) {
    const name = text.text.trim();
    const names = known.map((item) => item.name);
    const near = nearest(name, names) ?? longerName(name, names) ?? "";
    report(undeclared(kind, name, near, `${kind}s`, declaration(kind, name)), text.place);
  }
  return found;
}

/** The one name of which only some words were written, or that has fewer: "tube" for "home tube". */
function longerName(name: string, names: readonly string[]): string | undefined {
  const words = (of: string) => plainName(of).split(" ");
  const holds = (whole: string, part: string) => words(part).every((word) => words(whole).includes(word));
  const fits = names.filter((one) => holds(one, name) || holds(name, one));
  return fits.length === 1 ? fits[0] : undefined;
}

/** The lines to write; where a figure stands in the place of a name, with a name for it. */
function declaration(kind: string, name: string): string {
  const line = sectionLines[`${kind}s`]!;
  if (kind === "sand") return `\`${line}\` and under it \`${name}:\``;
  const example = /\{ (.*?): \{/.exec(line)![1]!;
  const figure = readQuantity(name).value;
  if (!figure) return `\`${line.replace(example, name)}\``;
  const step = figure.unit ? name : `${name} g`;
  const own =
    kind === "scale"
      ? line.replace(/reads to: [^ ]+ g/, `reads to: ${step.replace(/(\d)(?=[a-z])/i, "$1 ")}`)
      : line;
  return `\`${own}\`, and write its name here, \`${kind}: ${example}\``;
}
