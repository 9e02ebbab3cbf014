// One test of a batch: a number, one map of readings, or a list of either for repeats.

import { hasError, type Issue, type Place } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Rig, TestName, TestReading } from "./batch.ts";
import { checkBore, likelyBores } from "./check-bore.ts";
import { checkReading } from "./check-reading.ts";
import { unknownKey } from "./complaints-field.ts";
import { emptyReading, methodNeeded, methodUnsaid, missingField } from "./complaints-test.ts";
import { choiceOf, textOf, uniqueEntries } from "./fields.ts";
import { fractionMeant } from "./fraction.ts";
import { readingKeys } from "./log-keys.ts";
import { measuredOf, quantityOf } from "./measured.ts";
import { type Entry, type LogNode, type MapNode, plainName, type Report } from "./node.ts";
import { declared } from "./read-rig.ts";
import { squeezeStepOf } from "./read-squeeze.ts";
import { workedOf } from "./read-worked.ts";
import { missingFieldOf } from "./reading-inputs.ts";
import { formsOf, type TestField, type TestForm } from "./test-forms.ts";
import type { Measured, Scale } from "./types.ts";

export interface Instruments {
  readonly scales: readonly Scale[];
  readonly rigs: readonly Rig[];
  /** The sections as written: a name in them counts as declared even where its lines are at fault. */
  readonly scaleSection: LogNode | undefined;
  readonly rigSection: LogNode | undefined;
}

export interface TestReadings {
  /** Those that can be used; what is wrong with the others is reported. */
  readonly readings: readonly TestReading[];
  /** True where one was left out. */
  readonly leftOut: boolean;
}

export function readTest(
  test: TestName,
  entry: Entry,
  instruments: Instruments,
  report: Report,
): TestReadings {
  const items = entry.value.kind === "list" ? entry.value.items : [entry.value];
  const readings = items.flatMap((item) => {
    if (item.kind === "map") return readingOf(test, item, instruments, report) ?? [];
    if (item.kind === "text") return workedReading(test, item, report) ?? [];
    report(emptyReading(test, wanted(test)), item.kind === "empty" ? entry.keyPlace : item.place);
    return [];
  });
  return { readings, leftOut: readings.length < items.length };
}

function workedReading(test: TestName, node: LogNode, report: Report): TestReading | undefined {
  const worked = workedNumber(test, node, report);
  return worked && checked({ test, raw: {}, worked, place: node.place }, report);
}

function workedNumber(test: TestName, node: LogNode, report: Report): Measured | undefined {
  if (test === "squeeze") return squeezeStepOf(node, report);
  const quantity = quantityOf(node, test, report);
  if (!quantity) return undefined;
  const fraction = fractionMeant(test, quantity.text, [quantity]);
  if (fraction) return void report(fraction, quantity.place);
  return workedOf(test, quantity, quantity.place, report);
}

function readingOf(
  test: TestName,
  node: MapNode,
  instruments: Instruments,
  outer: Report,
): TestReading | undefined {
  const issues: Issue[] = [];
  const report: Report = (complaint, place) => {
    issues.push(complaint);
    outer(complaint, place);
  };
  const forms = formsOf(test);
  const entries = new Map(uniqueEntries(node, report).map((entry) => [plainName(entry.key), entry]));
  const get = (key: string) => entries.get(key)?.value;
  const methods = forms.flatMap((form) => form.methods);
  const said = methods.length > 0 ? choiceOf(get("method"), `method of ${test}`, methods, report) : undefined;
  const rig = declared(get("rig"), "rig", instruments.rigs, instruments.rigSection, report);
  const form = formOf(forms, said, [...entries.keys()], rig);
  if (!form) {
    report(methodNeeded(test, methods.join(", ")), node.place);
    return undefined;
  }
  if (form.methods.length > 1 && said === undefined)
    report(methodUnsaid(test, methods.join(", ")), node.place);
  const method = said ?? (form.methods.length === 1 ? form.methods[0] : undefined);
  unknownKeys(entries, form, test, methods.length > 0, report);

  const scale = declared(get("scale"), "scale", instruments.scales, instruments.scaleSection, report);
  const note = textOf(get("note"), "note", report);
  const raw: Record<string, Measured> = {};
  for (const field of form.fields) {
    const measured = measuredOf(get(field.key), field, report);
    if (measured) raw[field.raw] = measured;
  }
  const bores = instruments.rigs.map((one) => one.fields.boreMm);
  if (raw.diameterMm) checkBore("A diameter", raw.diameterMm, likelyBores(bores), report);
  const number = entries.get("number");
  const worked = number && workedNumber(test, number.value, report);
  if (hasError(issues)) return undefined;
  const reading: TestReading = {
    test,
    raw,
    place: node.place,
    ...(method === undefined ? {} : { method }),
    ...(rig ? { rig } : {}),
    ...(scale ? { scale } : {}),
    ...(worked ? { worked } : {}),
    ...(note === undefined ? {} : { note }),
  };
  return complete(reading, node.place, report) ? checked(reading, report) : undefined;
}

/** A number that is given needs no readings beside it. */
function complete(reading: TestReading, place: Place, report: Report): boolean {
  if (reading.worked) return true;
  const { test, raw } = reading;
  if (Object.keys(raw).length === 0) report(emptyReading(test, wanted(test)), place);
  else {
    const missing = missingFieldOf(reading);
    if (!missing) return true;
    report(missingField(test, missing.key, missing.says), place);
  }
  return false;
}

function checked(reading: TestReading, report: Report): TestReading | undefined {
  const issues = checkReading(reading);
  for (const issue of issues) report(issue, reading.place);
  return hasError(issues) ? undefined : reading;
}

/** By the method that is named; else by the keys and the rig: the form that finds most of its fields, if one does better than the others. */
function formOf(
  forms: readonly TestForm[],
  said: string | undefined,
  keys: readonly string[],
  rig: Rig | undefined,
): TestForm | undefined {
  if (said !== undefined) return forms.find(({ methods }) => methods.includes(said));
  if (forms.length === 1) return forms[0];
  const given = ({ key, fromRig }: TestField) =>
    keys.includes(key) || (fromRig !== undefined && rig?.fields[fromRig] !== undefined);
  const known = forms
    .map((form) => ({ form, count: form.fields.filter(given).length }))
    .sort((a, b) => b.count - a.count);
  if (known[0]!.count > known[1]!.count || keys.includes("number")) return known[0]!.form;
  return undefined;
}

function unknownKeys(
  entries: ReadonlyMap<string, Entry>,
  form: TestForm,
  test: TestName,
  hasMethod: boolean,
  report: Report,
): void {
  const common = readingKeys.filter((key) => key !== "method" || hasMethod);
  const known = [...common, "number", ...form.fields.map(({ key }: TestField) => key)];
  for (const [name, { key, keyPlace }] of entries) {
    if (known.includes(name)) continue;
    const by = form.methods.length === 1 ? ` by ${form.methods[0]}` : "";
    report(unknownKey(key, `for ${test}${by}`, nearest(name, known) ?? "", known.join(", ")), keyPlace);
  }
}

/** The fields of a test's first way of writing it, for a remedy. */
function wanted(test: TestName): string {
  const fields = formsOf(test)[0]?.fields.filter(({ needed }) => needed) ?? [];
  if (fields.length === 0) return `\`${test}: 3\``;
  return `\`${test}: { ${fields.map(({ key, unit }) => `${key}: ... ${unit}`).join(", ")} }\``;
}
