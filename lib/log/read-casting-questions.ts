// What the founder wants to know of faults and sand: pairs named before looking.

import { entryOf } from "../numbers/entry-of.ts";
import { nearest } from "../numbers/nearest.ts";
import {
  type CastingQuestion,
  type PourSide,
  pourSides,
  type SandSide,
  sandSides,
} from "./casting-record.ts";
import {
  limitOfYesNo,
  questionLacks,
  questionsWithoutCastings,
  questionTwice,
} from "./complaints-casting.ts";
import { unknownChoice } from "./complaints-field.ts";
import { fieldsOf, textNodeOf, textOf } from "./fields.ts";
import { given } from "./given.ts";
import { castingQuestionKeys } from "./heap-keys.ts";
import type { MeasuredField } from "./measured.ts";
import { type Entry, type MapNode, plainName, type Report, type TextNode } from "./node.ts";
import { faultOf } from "./read-castings.ts";
import { mapsOf, numberIn } from "./read-season-fields.ts";

type Side = SandSide | PourSide;
const sides: readonly Side[] = [...sandSides, ...pourSides];

const alias: { readonly [name: string]: Side } = {
  gfn: "fineness",
  "grain fineness": "fineness",
  "green strength": "green compression",
  water: "moisture",
  temperature: "pouring temperature",
  at: "pouring temperature",
  scrap: "scrap share",
  degassing: "degassed",
};

const percent = { unit: "%", most: 100, aboveZero: false };
const strength = { unit: "kPa", most: 2000 };
/** In what a limit is read. */
const limits: { readonly [side in Exclude<Side, "degassed">]: Pick<MeasuredField, "unit" | "most"> } = {
  moisture: percent,
  compactability: percent,
  "green compression": strength,
  "green shear": strength,
  splitting: strength,
  permeability: { unit: "", most: 10_000 },
  "clay by wash": percent,
  "live clay": percent,
  fineness: { unit: "", most: 1000 },
  fines: percent,
  "pouring temperature": { unit: "°C", most: 2000 },
  "scrap share": percent,
  section: { unit: "mm", most: 2000 },
};

/** In the order of the log; a pair that stands twice is read once. hasCastings: whether there is anything to ask. */
export function readCastingQuestions(
  entry: Entry | undefined,
  hasCastings: boolean,
  report: Report,
): CastingQuestion[] {
  const questions: CastingQuestion[] = [];
  for (const map of mapsOf(entry?.value, "questions", report)) {
    const question = questionOf(map, report);
    const before = questions.find(
      ({ fault, against }) => fault === question?.fault && against === question.against,
    );
    if (before) report(questionTwice(String(before.place.line)), map.place);
    else if (question) questions.push(question);
  }
  if (entry && questions.length > 0 && !hasCastings) report(questionsWithoutCastings(), entry.keyPlace);
  return questions;
}

function questionOf(map: MapNode, report: Report): CastingQuestion | undefined {
  const fields = fieldsOf(map, castingQuestionKeys, "of a question", report);
  textOf(fields.get("note"), "note", report);
  const asked = textNodeOf(fields.get("fault"), "fault", report);
  const held = textNodeOf(fields.get("against"), "against", report);
  const fault = asked && faultOf(asked, report);
  const against = held && sideOf(held, report);
  if (!fault || !against) {
    const lacking = [...(fault ? [] : ["a fault"]), ...(against ? [] : ["what it is held against"])];
    if (!fields.holed) report(questionLacks(lacking.join(" and ")), map.place);
    return undefined;
  }
  const common = { fault, against, place: map.place };
  if (against === "degassed") {
    const needless = fields.get("limit");
    if (needless) report(limitOfYesNo(), needless.place);
    return common;
  }
  const { unit, most, ...more } = limits[against];
  const limit = numberIn({ fields, report }, "limit", unit, most, more);
  return { ...common, ...given({ limit }) };
}

function sideOf({ text, place }: TextNode, report: Report): Side | undefined {
  const name = plainName(text);
  const side = sides.find((one) => one === name) ?? entryOf(alias, name);
  if (side) return side;
  const near = nearest(name, [...sides, ...Object.keys(alias)]) ?? "";
  report(
    unknownChoice("something to hold a fault against", text, entryOf(alias, near) ?? near, sides.join(", ")),
    place,
  );
  return undefined;
}
