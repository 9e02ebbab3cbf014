// Who and what: the fields at the top of a log.

import { entryOf } from "../numbers/entry-of.ts";
import { bondNames, metalNamed, metalNames } from "../sand/metals.ts";
import { badFormat, newerFormat, noFormat, noUsualRanges } from "./complaints-file.ts";
import { choiceOf, type Fields, textNodeOf, textOf, yesNoOf } from "./fields.ts";
import { isHoled, type MapNode, type Report } from "./node.ts";
import type { Log } from "./types.ts";

export type Head = Pick<Log, "title" | "founder" | "note" | "invented" | "metal" | "bond" | "units">;

/** A founder who says clay most likely added it; one whose sand is natural says where it is from. */
const bondMeant = (text: string): string | undefined =>
  /clay|bento|sodium|calcium|western|southern/.test(text) ? "bentonite" : undefined;

const otherSystems: { readonly [name: string]: "metric" | "us" } = {
  si: "metric",
  imperial: "us",
  american: "us",
  customary: "us",
  "us customary": "us",
};

export function readHead(fields: Fields, root: MapNode, report: Report): Head {
  const title = textOf(fields.get("title"), "title", report);
  const founder = textOf(fields.get("founder"), "founder", report);
  const note = textOf(fields.get("note"), "note", report);
  const metal = choiceOf(fields.get("metal"), "metal", metalNames, report, { named: metalNamed });
  const bond = choiceOf(fields.get("bond"), "bond", bondNames, report, { meant: bondMeant });
  const units = choiceOf(fields.get("units"), "units", ["metric", "us"], report, {
    named: (text) => (text === "u.s." || text === "usa" ? "us" : undefined),
    meant: (text) => entryOf(otherSystems, text),
  });
  sayWhatRangesNeed(fields, root, report);
  return {
    invented: yesNoOf(fields.get("invented"), "invented", report) ?? false,
    ...(title === undefined ? {} : { title }),
    ...(founder === undefined ? {} : { founder }),
    ...(note === undefined ? {} : { note }),
    ...(metal === undefined ? {} : { metal }),
    ...(bond === undefined ? {} : { bond }),
    ...(units === undefined ? {} : { units: units === "us" ? "US" : "metric" }),
  };
}

function sayWhatRangesNeed(fields: Fields, root: MapNode, report: Report): void {
  const unsaid = [
    { name: "metal", is: "which metal is poured", example: "`metal: aluminium`" },
    { name: "bond", is: "what holds the grains", example: "`bond: bentonite`" },
  ].filter(({ name }) => !fields.get(name));
  if (unsaid.length === 0 || fields.holed) return;
  const words = unsaid.map(({ is }) => is).join(", nor ");
  const examples = unsaid.map(({ example }) => example).join(" and ");
  report(noUsualRanges(words, examples), { ...root.place, length: 1 });
}

/** False when the log is in a format that this library does not know. */
export function checkFormat(fields: Fields, root: MapNode, report: Report): boolean {
  if (!fields.get("format")) {
    if (!isHoled(root)) report(noFormat(), { ...root.place, length: 1 });
    return true;
  }
  const format = textNodeOf(fields.get("format"), "format", report);
  if (!format || /^1(\.0*)?$/.test(format.text.trim())) return true;
  if (/^\d+(\.\d+)?$/.test(format.text.trim()) && Number(format.text) > 1) {
    report(newerFormat(format.text), format.place);
    return false;
  }
  report(badFormat(format.text), format.place);
  return true;
}
