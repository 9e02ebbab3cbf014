// A blend: which sands of the log, and what they are to come to.

import { metalNamed, metalNames } from "../sand/metals.ts";
import { noBlendAim, noBlendSands, severalBlendAims } from "./complaints-season.ts";
import { choiceOf, fieldsOf, mapOf, textNodeOf, textOf } from "./fields.ts";
import { given } from "./given.ts";
import type { BlendAim, LoggedBlend } from "./heap-record.ts";
import { type Entry, isHoled, type LogNode, type Report } from "./node.ts";
import { declared } from "./read-rig.ts";
import { numberIn } from "./read-season-fields.ts";

/** sands: names that the log declares. */
export function readBlend(
  entry: Entry | undefined,
  sands: readonly string[],
  report: Report,
): LoggedBlend | undefined {
  const map = mapOf(entry?.value, "blend", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, ["of", "to", "note"], "of a blend", report);
  textOf(fields.get("note"), "note", report);
  const known = sands.map((name) => ({ name }));
  const sandOf = (node: LogNode | undefined) =>
    known.length === 0
      ? textNodeOf(node, "sand", report)?.text.trim()
      : declared(node, "sand", known, undefined, report)?.name;
  const list = fields.get("of");
  const named = list?.kind === "list" ? list.items.flatMap((item) => sandOf(item) ?? []) : [];
  const of = [...new Set(named)];
  if (of.length < 2 && !isHoled(list)) report(noBlendSands(), list?.place ?? entry.keyPlace);
  return { of, ...given({ to: aimOf(fields.entry("to"), entry, sandOf, report) }), place: entry.keyPlace };
}

const aims = ["gfn", "like", "band"] as const;

function aimOf(
  entry: Entry | undefined,
  blend: Entry,
  sandOf: (node: LogNode | undefined) => string | undefined,
  report: Report,
): BlendAim | undefined {
  const map = mapOf(entry?.value, "to", report);
  if (!map) return entry ? undefined : void report(noBlendAim(), blend.keyPlace);
  const fields = fieldsOf(map, aims, "as the aim of a blend", report);
  const said = aims.filter((aim) => fields.get(aim));
  if (said.length > 1) report(severalBlendAims(), fields.entry(said[1]!)!.keyPlace);
  switch (said[0]) {
    case "gfn": {
      const gfn = numberIn({ fields, report }, "gfn", "", 1000);
      return gfn && { kind: "gfn", gfn };
    }
    case "like": {
      const sand = sandOf(fields.get("like"));
      return sand === undefined ? undefined : { kind: "like", sand };
    }
    case "band": {
      const metal = choiceOf(fields.get("band"), "band", metalNames, report, { named: metalNamed });
      return metal && { kind: "band", metal };
    }
    default:
      if (!fields.holed) report(noBlendAim(), map.place);
      return undefined;
  }
}
