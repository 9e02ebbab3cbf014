// What each fault is usually put down to, and where the sand stood, as a section of a page.

import { type CauseStanding, causeStandings, linkSource, type SideCount } from "../finding/casting-causes.ts";
import { capital } from "../finding/casting-words.ts";
import type { Log } from "../log/types.ts";
import { type CastingFault, castingFaultRows } from "../sand/casting-faults.ts";
import type { FaultCount, FaultsAndSand } from "../trial/faults-and-sand.ts";
import type { Block, Section, TableRow } from "./blocks.ts";
import { castingPrintIn } from "./casting-print.ts";
import type { ShownUnits } from "./shown-units.ts";

/**
 * Faults that were found: what comes first outside the sand, then the sand, with where it stood.
 * @example castingCauses(faultsAndSand(log), log, shownUnits(log)).title
 */
export function castingCauses(
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): Section {
  if (report.faults.length === 0) return { role: "result", title: "", blocks: [] };
  return {
    role: "result",
    title: "What such faults are usually put down to",
    blocks: [
      {
        kind: "table",
        name: "casting-first-causes",
        caption: "Looked at first: metal, pouring, gating, pattern (common practice)",
        columns: ["Fault", "Looks like", "Looked at first"].map((head) => ({ head, align: "text" })),
        rows: report.faults.map(({ fault }) => firstRow(fault)),
      },
      {
        kind: "table",
        name: "casting-sand-causes",
        caption:
          "In the sand and the ramming: on how many pours the sand lay on that side of the range, with its whole ±; not sure: its ± runs across the edge. Pours without a test near enough are not counted",
        columns: ["Fault, and in the sand", "Pours with it", "Pours without", "Range", "Link"].map(
          (head) => ({
            head,
            align: "text",
          }),
        ),
        rows: report.faults.flatMap((count) => causeRows(count, report, log, units)),
        foldAfter: 24,
      },
      ...originsList(report, log, units),
      {
        kind: "prose",
        text: "A link that was read in a source, against a range that was read or the log's own aim, makes a finding. A link or a range that is common practice, from memory or our own is shown and makes none. A table of causes says where to look; it proves none.",
      },
    ],
  };
}

function firstRow(fault: CastingFault): TableRow {
  const { looks, first } = castingFaultRows[fault];
  return [capital(fault), looks, first.join("; ")];
}

function causeRows(
  count: FaultCount,
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): TableRow[] {
  return causeStandings(count, report, log).map((standing) => [
    `${capital(count.fault)}: ${standing.cause.says}`,
    sideWords(standing.withIt),
    sideWords(standing.without),
    rangeWords(standing, units),
    tagOf(linkSource(standing.cause)),
  ]);
}

function sideWords(side: SideCount | undefined): string {
  if (!side) return "";
  if (side.tested === 0) return "not tested";
  return `${side.on} of ${side.tested}${side.notTold > 0 ? ` (${side.notTold} not sure)` : ""}`;
}

function rangeWords(standing: CauseStanding, units: ShownUnits): string {
  const { cause, range } = standing;
  if (!cause.test) return "no home test";
  if (!range) return "no range known for this metal, bond and fineness";
  return `${rangeEnds(standing, units)} (${tagOf(range.source)})`;
}

/** "read" of "a paper on sands (read)"; the whole where it has no tag. */
function tagOf(source: string): string {
  return /\(([^()]+)\)$/.exec(source)?.[1] ?? source;
}

/** Where ranges and links come from, each told once. */
function originsList(
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  units: ShownUnits,
): Block[] {
  const standings = report.faults.flatMap((count) =>
    causeStandings(count, report, log).map((standing) => ({ ...standing, fault: count.fault })),
  );
  const ranges = standings.flatMap((standing) => {
    const { cause, range } = standing;
    return cause.test && range
      ? [`${capital(cause.test.property)} ${rangeEnds(standing, units)}: ${range.source}`]
      : [];
  });
  const bySource = new Map<string, string[]>();
  for (const { fault, cause } of standings) {
    const source = linkSource(cause);
    bySource.set(source, [...(bySource.get(source) ?? []), `${fault}, ${cause.says}`]);
  }
  const links = [...bySource].map(([source, own]) => `${own.join("; ")}: ${source}`);
  const list = (items: readonly string[]): Block => ({ kind: "list", items });
  if (standings.length === 0) return [];
  return [
    {
      kind: "fold",
      summary: "Where the ranges and the links come from",
      blocks: [...(ranges.length === 0 ? [] : [list([...new Set(ranges)])]), list(links.map(capital))],
    },
  ];
}

function rangeEnds({ cause, range }: CauseStanding, units: ShownUnits): string {
  const print = castingPrintIn(units);
  const { property } = cause.test!;
  const of =
    property === "green compression"
      ? ({ unit: "kPa", test: property } as const)
      : { unit: percent.includes(property) ? "%" : "" };
  const low = print.number(range!.low, { ...of, unit: of.unit === "%" ? "" : of.unit });
  return `${low} to ${print.number(range!.high, of)}`;
}

const percent: readonly string[] = ["moisture", "compactability", "live clay"];
