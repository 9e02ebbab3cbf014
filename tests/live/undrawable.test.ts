// A chart that cannot be drawn after a change costs its own place alone: the sentence stands there, the rest is right.

import { expect, test } from "vitest";
import { doubtBars } from "../../lib/chart/doubt-bars.ts";
import { chartSvgWithoutCode } from "../../lib/chart/svg.ts";
import { type Chart, notebook, section } from "../../lib/index.ts";
import { drawingCache, type Told, workOut } from "../../lib/live/work-out.ts";
import { drawingAt } from "../../lib/page/html-blocks.ts";
import { texts } from "./log.ts";

const good = doubtBars({ name: "doubt", shares: [{ label: "weighing", sharePercent: 62 }] });
/** Reads from an address, which no chart may. */
const bad: Chart = {
  ...good,
  name: "elsewhere",
  spec: (width) => ({ width, data: { url: "https://page.invalid/<b>" }, mark: "bar" }),
};

test("the sentence stands in place of one chart, the other is drawn, and everything settles", async () => {
  const told: Told[] = [];
  await workOut(
    { id: 1, texts, shows: "wide", inView: [1], check: false, drawn: [] },
    {
      notebook: notebook("Two charts", () => ({
        question: "Which of two can be drawn?",
        answer: ["One."],
        sections: [section("result", "Both", [bad, good])],
      })),
      tell: (one) => told.push(one),
      idle: async () => false,
      cache: drawingCache(),
    },
  );
  expect(told.map(({ kind }) => kind)).toEqual(["page", "rest", "done", "drawing", "drawing", "drawn"]);
  const [page, rest, done, ...narrow] = told;
  const [first] = page?.kind === "page" ? page.drawings : [];
  expect(first?.html).toMatch(/^<p class="undrawable">This chart cannot be drawn as the log is now \(.+\)\./);
  expect(first?.html).not.toContain("<b>");
  const svg = await chartSvgWithoutCode(good.spec(720));
  const [second] = done?.kind === "done" ? done.drawings : [];
  expect(second?.html).toBe(drawingAt(svg, "wide", 2));
  const figures = rest?.kind === "rest" ? rest.figures : [];
  expect(figures.map(({ number, width }) => [number, width])).toEqual([
    [1, "narrow"],
    [2, "narrow"],
  ]);
  expect(narrow.flatMap((one) => (one.kind === "drawing" ? one.drawing.key : []))).toEqual(
    figures.map(({ key }) => key),
  );
});
