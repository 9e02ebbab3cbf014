// The squeeze: a step from 1 to 5, by number or by its words.

import { squeezeSteps } from "../sand/squeeze.ts";
import { notAStep } from "./complaints-test.ts";
import { textNodeOf } from "./fields.ts";
import { type LogNode, plainName, type Report } from "./node.ts";
import type { Measured } from "./types.ts";

export function squeezeStepOf(node: LogNode, report: Report): Measured | undefined {
  const text = textNodeOf(node, "squeeze", report);
  if (!text) return undefined;
  const step = squeezeSteps.find(
    ({ step, name }) => text.text.trim() === String(step) || plainName(text.text) === plainName(name),
  );
  if (step) return { value: step.step, text: text.text, place: text.place };
  report(notAStep(text.text, squeezeSteps.map(({ step, name }) => `${step} ${name}`).join(", ")), text.place);
  return undefined;
}
