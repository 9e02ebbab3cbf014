// What a write-up tells before any result: asked, done, read, left out.

import { writeUpCautions } from "../finding/write-up-cautions.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import type { Block, Section } from "./blocks.ts";
import { grainData } from "./grain-data.ts";
import { type ShownUnits, sievedUnits } from "./shown-units.ts";
import { trialData } from "./trial-data.ts";
import { writeUpLeftOut } from "./write-up-left-out.ts";
import { writeUpMethod } from "./write-up-method.ts";
import { writeUpQuestion } from "./write-up-question.ts";
import { writeUpSheets } from "./write-up-sheets.ts";

/**
 * Cautions, question, method, batches and figures, the readings as typed, what was left out.
 * @example writeUpData(writeUpOf(log), shownUnits(log)).map(({ title }) => title)
 */
export function writeUpData(writeUp: WriteUp, units: ShownUnits): readonly Section[] {
  const { rows, sands } = writeUp;
  return [
    {
      role: "cautions",
      title: "Before you repeat it",
      blocks: writeUpCautions(writeUp).map((caution): Block => ({ kind: "caution", caution })),
    },
    writeUpQuestion(writeUp, units),
    writeUpMethod(writeUp, units),
    ...(sands.length > 0 ? [grainData(sands, sievedUnits(writeUp.log))] : []),
    ...(rows.length > 0 ? [trialData(rows, units), writeUpSheets(rows), writeUpLeftOut(writeUp)] : []),
  ];
}
