// What can be wrong between the sheets of a log, and with what a log asks of them.

import { issueMessage } from "../message.ts";

export const circleOfSheets = issueMessage("sheet/circle-of-sheets", "error", (names: readonly string[]) => ({
  message:
    names.length === 1
      ? `The sheet "${names[0]}" looks up in itself.`
      : `These sheets look up in each other in a circle: ${names.join(", ")}.`,
  remedy: "Take one lookUp() out, or put what both need into a sheet of its own.",
}));

export const bandUnit = issueMessage(
  "sheet/band-unit",
  "warning",
  (band: string, column: string, unit: string) => ({
    message: `The band "${band}" cannot be turned into ${unit === "" ? "a plain number" : unit}, which "${column}" is in, so it is not drawn.`,
    remedy:
      unit === "" ? "Write both ends without a unit." : `Write both ends in ${unit}, or without a unit.`,
  }),
);
