// How it was made and measured, in enough detail to be done again.

import { listed } from "../finding/batch-names.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import type { Batch, TestReading } from "../log/batch.ts";
import type { LoggedMuller } from "../log/heap-record.ts";
import { rigWordsFor } from "../sand/rig-words.ts";
import type { Block, Section, Text } from "./blocks.ts";
import type { ShownUnits } from "./shown-units.ts";
import { lead, told } from "./write-up-question.ts";
import { writeUpRigs } from "./write-up-rigs.ts";

/** The founder's own words, the order of the batches, the sands, the rigs and scales, and each test as it is usually done. */
export function writeUpMethod({ log, record, rows, sands }: WriteUp, units: ShownUnits): Section {
  const batches = rows.map(({ batch }) => batch);
  const steps: readonly Block[] = told("Step by step, in the founder's words", record?.measured).map(
    (block) => (block.kind === "list" ? { ...block, ordered: true } : block),
  );
  const facts = [...sandFacts(sands, log), ...mullerFacts(log.muller), ...orderFacts(batches)];
  return {
    role: "data",
    title: "How it was made and measured",
    blocks: [
      ...(log.note === undefined ? [] : [{ kind: "prose", text: log.note } as const]),
      ...steps,
      ...(facts.length > 0 ? [{ kind: "list", items: facts } as const] : []),
      ...writeUpRigs(log.rigs, log.scales, units.recipe),
      ...testsAsDone(batches.flatMap(({ readings }) => readings)),
    ],
  };
}

function sandFacts(sands: readonly SandReport[], { sands: logged, batches }: WriteUp["log"]): Text[] {
  const used = new Set(batches.flatMap(({ sand }) => sand ?? []));
  return logged
    .filter(({ name }) => used.size === 0 || used.has(name))
    .map(({ name, state, note }) => {
      const report = sands.find(({ sand }) => sand.name === name);
      const washed = report?.sievings.every((sieving) => sieving.washed) ? "washed" : "not washed";
      const fineness = !report
        ? "not sieved"
        : report.trusted && report.printed
          ? `grain fineness number ${figureText(report)} by ${report.sievings.length === 1 ? "one sieving" : `${report.sievings.length} sievings`}, ${washed}`
          : `sieved, but without a fineness number to rely on (${figureText(report)})`;
      return `Sand: ${name}, ${state}; ${fineness}.${note === undefined ? "" : ` ${note}`}`;
    });
}

const mullerParts = {
  panDiameterMm: "pan",
  wheels: "wheels",
  wheelWidthMm: "width of a wheel",
  ploughs: "ploughs",
  motorRpm: "motor",
  reduction: "reduction",
  loadKg: "load",
} as const;

/** What the log says of the machine, as typed. */
function mullerFacts(muller: LoggedMuller | undefined): Text[] {
  const said = Object.entries(mullerParts).flatMap(([part, name]) => {
    const one = muller?.[part as keyof typeof mullerParts];
    return one ? [`${name} ${one.text}`] : [];
  });
  return said.length === 0 ? [] : [`Muller: ${said.join(", ")}.`];
}

/** Day by day in the order that the log says; nothing where it says none. */
function orderFacts(batches: readonly Batch[]): Text[] {
  const ordered = batches.filter(({ order }) => order !== undefined).sort((a, b) => a.order! - b.order!);
  if (ordered.length < 2) return [];
  const days = [...new Set(ordered.map(({ date }) => date ?? ""))].sort();
  const stepped = batches.filter(({ sameHeap }) => sameHeap).map(({ name }) => name);
  return [
    ...days.map((day) => {
      const names = ordered.filter(({ date = "" }) => date === day).map(({ name }) => name);
      return `Order${day === "" ? "" : ` on ${day}`}: ${names.join(", ")}.`;
    }),
    ...(stepped.length > 0
      ? [`The batch before, wetted further: ${listed(stepped)}.`]
      : ["Every batch was made fresh."]),
  ];
}

/** One line a test and method: the hazard first, then how it is usually done, and what puts it off. */
function testsAsDone(readings: readonly TestReading[]): readonly Block[] {
  const ways = new Map(readings.map(({ test, method }) => [`${test} ${method ?? ""}`, { test, method }]));
  const items = [...ways.values()].flatMap(({ test, method }): Text[] => {
    const words = rigWordsFor(test, method);
    // Without a method there is one way, or the log does not say which.
    if (words.length !== 1) return [];
    const [{ hazard, shows, doubt }] = words as [(typeof words)[number]];
    const name = method === undefined ? test : `${test}, ${method}`;
    return [[{ strong: `${name.charAt(0).toUpperCase()}${name.slice(1)}. ` }, `${hazard} ${shows} ${doubt}`]];
  });
  if (items.length === 0) return [];
  return [
    lead("Each test as it is usually done"),
    {
      kind: "prose",
      text: "Common practice, to repeat them by; where the founder's own words above say otherwise, those are what was done.",
    },
    { kind: "list", items },
  ];
}
