// What the panels of a trial may rely on: figures that are figures, in the order of the axis.

import { invariant } from "../issue.ts";
import { ends } from "./data.ts";
import type { ResponsePanel, ResponsePanelsInput } from "./response-input.ts";

const byX = (a: { x: number }, b: { x: number }) => a.x - b.x;

/** Leaves out what is no figure; throws Misuse where low and high stand the wrong way round. */
export function checkedPanels(input: ResponsePanelsInput): ResponsePanelsInput {
  if (input.window) notReversed(input.window, "the window");
  if (input.aimAt) notReversed(input.aimAt, "the aim on the axis");
  return { ...input, panels: input.panels.map(checked) };
}

function checked(panel: ResponsePanel): ResponsePanel {
  for (const point of panel.points) {
    ends({ low: point.xLow, high: point.xHigh });
    ends({ low: point.yLow, high: point.yHigh });
  }
  if (panel.band) notReversed(panel.band, `the band "${panel.band.label}"`);
  if (panel.aim) notReversed(panel.aim, `the aim of ${panel.property}`);
  if (panel.optimum?.bounded) notReversed(panel.optimum, `the optimum of ${panel.property}`);
  const curve = (panel.curve ?? []).filter((at) => Number.isFinite(at.x) && Number.isFinite(at.mean));
  for (const at of curve) {
    ends(at);
    ends({ low: at.newLow, high: at.newHigh });
  }
  return {
    ...panel,
    points: panel.points.filter(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)),
    curve: curve.toSorted(byX),
    typical: (panel.typical ?? []).map((course) => ({
      ...course,
      points: course.points.filter((at) => Number.isFinite(at.x) && ends(at)).toSorted(byX),
    })),
  };
}

function notReversed({ low, high }: { readonly low: number; readonly high: number }, what: string): void {
  invariant(!(low > high), `${what} runs from ${low} to ${high}`);
}
