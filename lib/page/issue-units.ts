// Issues in the units of their page: figures that a message holds as amounts are printed anew.

import { messageNamed } from "../catalogue/messages.ts";
import type { Issue } from "../issue.ts";
import type { Log } from "../log/types.ts";
import { mapped, type Phrase } from "../phrase.ts";
import { amount, amounts } from "../quantity/amount.ts";
import { inShownUnit, shownUnits } from "./shown-units.ts";

/** The issues of a log as its pages print them: metric, or in US measures where the log is; what was typed stays. */
export function issuesInUnits(
  issues: readonly Issue[],
  log: Pick<Log, "units" | "batches">,
): readonly Issue[] {
  if (issues.length === 0 || (log.units ?? shownUnits(log).recipe) !== "US") return issues;
  return issues.map(inUs);
}

function inUs(issue: Issue): Issue {
  const { code, said = [], lead } = issue;
  let changed = false;
  const again = mapped(said, function turn(phrase): unknown {
    const text = usText(phrase);
    if (text !== undefined) changed = true;
    return text ?? messageNamed(phrase.code)(...(mapped(phrase.said, turn) as never[]));
  }) as readonly unknown[];
  if (!changed) return issue;
  const { message, remedy } = messageNamed(code)(...(again as never[])) as Issue;
  return {
    ...issue,
    message: lead === undefined ? message : `${lead}: ${message}`,
    ...(remedy === undefined ? {} : { remedy }),
    said: again,
  };
}

/** The amount in US measures; undefined for another phrase, and for a unit that is the same in both. */
function usText({ code, said }: Phrase): string | undefined {
  if (code !== amount.code && code !== amounts.code) return undefined;
  const values = said.filter((one) => typeof one === "number").slice(0, -1);
  const metric = said.find((one) => typeof one === "string") as string;
  const figures = Math.min(4, said.at(-1) as number);
  const shown = values.map((value) => inShownUnit(value, metric, "US"));
  const unit = shown[0]!.unit;
  if (unit === metric) return undefined;
  return `${shown.map(({ value }) => Number(value.toPrecision(figures))).join(" to ")} ${unit}`;
}
