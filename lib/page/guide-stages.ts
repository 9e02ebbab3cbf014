// The way of the guide as blocks: one stage told whole, and all of them in a table.

import type { StageStanding } from "../finding/guide-held.ts";
import type { GuideStage } from "../finding/guide-stage.ts";
import type { Block, Section, TableBlock, Text } from "./blocks.ts";
import { codePieces } from "./visible.ts";

const marks = { "on record": "●", begun: "◐", "not yet": "○" } as const;

/**
 * Where the log stands, a row a stage.
 * @example guideTable(guideReport(log).standings).name // "stages"
 */
export function guideTable(standings: readonly StageStanding[]): TableBlock {
  return {
    kind: "table",
    name: "stages",
    caption: "The way from an empty yard to a write-up, and what this log holds of it",
    columns: [
      { head: "Stage", align: "text" },
      { head: "State", align: "text" },
      { head: "What the log holds", align: "text" },
      { head: "What is missing", align: "text" },
    ],
    rows: standings.map(({ stage, state, holds, lacks }, i) => [
      `${i + 1}. ${stage.title}`,
      `${marks[state]} ${state}`,
      holds.map(String).join(" "),
      state === "not yet" ? "all of it" : lacks.map(String).join(" "),
    ]),
  };
}

/**
 * A stage as its own section: hazard first, what it is for and takes, how, card, lines, commands.
 * @example guideStage(guideReport(log).standings[0]!, log.file).title
 */
export function guideStage(standing: StageStanding, file: string): Section {
  const { stage, state } = standing;
  return {
    role: "result",
    title: `${stage.title}${state === "on record" ? " (on record)" : ""}`,
    blocks: [
      { kind: "prose", text: hazards(stage) },
      ...guideStageTold(standing),
      ...(state === "on record"
        ? [
            {
              kind: "fold",
              summary: "How it is done",
              screenOnly: true,
              blocks: guideStageDone(stage, file),
            } as const,
          ]
        : guideStageDone(stage, file)),
    ],
  };
}

/**
 * What a stage is for, what it takes, and where the log stands.
 * @example guideStageTold(guideReport(log).standings[0]!).length
 */
export function guideStageTold({ stage, holds, lacks }: StageStanding): Block[] {
  return [
    { kind: "prose", text: stage.purpose },
    ...(holds.length > 0 ? [prose("In this log: ", holds.map(String).join(" "))] : []),
    ...(holds.length > 0 && lacks.length > 0 ? [prose("Missing: ", lacks.map(String).join(" "))] : []),
  ];
}

/**
 * How it is done, what to print, to write and to run.
 * @example guideStageDone(guideReport(log).standings[0]!.stage, log.file).length
 */
export function guideStageDone(stage: GuideStage, file: string): Block[] {
  return [
    prose("Time: ", stage.takes),
    prose("To own: ", stage.owns),
    { kind: "list", ordered: true, items: stage.steps.map(withCode) },
    prose("", "Into the log, with your own figures (these are invented):"),
    { kind: "lines", text: stage.lines },
    prose("", "The commands: cards to print, then the page."),
    { kind: "lines", text: guideCommands(stage, file).join("\n") },
  ];
}

/** Keys of a log, which steps name between back-ticks. */
function withCode(step: string): Text {
  return codePieces(step).map(({ words, code }) => (code ? { code: words } : words));
}

/** The commands of a stage, for a log of that name. */
export function guideCommands({ cards, begin, notebook }: GuideStage, file: string): readonly string[] {
  // A name that a shell would take apart is not put into a command.
  const log = /^[\w.@+-]+\.ya?ml$/i.test(file) && !file.startsWith("-") ? file : "my-sands.yaml";
  return [
    ...cards.map((card) => `mullbook card ${card}`),
    ...(begin === undefined ? [] : [`mullbook begin example-${begin}.yaml --for ${begin}`]),
    `mullbook check ${log}`,
    `mullbook write ${notebook} ${log}`,
  ];
}

const hazards = ({ cautions }: GuideStage): Text => [
  { strong: "Hazard. " },
  [...new Set(cautions.map(({ text }) => text))].join(" "),
];

const prose = (strong: string, text: string): Block => ({
  kind: "prose",
  text: strong === "" ? text : [{ strong }, text],
});
