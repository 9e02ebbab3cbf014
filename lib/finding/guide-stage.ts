// One stage of the way from an empty yard to a write-up, as the guide tells it.

import type { Caution } from "./finding.ts";

export const stageNames = [
  "sand",
  "sieving",
  "scales",
  "rigs",
  "recipe",
  "moisture trial",
  "aim",
  "heap",
  "castings",
  "write-up",
] as const;
export type StageName = (typeof stageNames)[number];

export interface GuideStage {
  readonly name: StageName;
  readonly title: string;
  /** What it is for. */
  readonly purpose: string;
  readonly takes: string;
  readonly owns: string;
  /** The gravest first. */
  readonly cautions: readonly Caution[];
  readonly steps: readonly string[];
  /** Names of bench cards. */
  readonly cards: readonly string[];
  /** Lines of a log, with invented figures. */
  readonly lines: string;
  /** Which log to begin with, where one teaches this stage alone. */
  readonly begin?: string;
  /** The notebook that makes something of it. */
  readonly notebook: string;
}
