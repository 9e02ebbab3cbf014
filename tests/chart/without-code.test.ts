// A live page may not run code made of text: there the drawings are walked through, and come out the same to the letter.

import { expect, test } from "vitest";
import { vegaSvg, vegaSvgWithoutCode } from "../../lib/chart/svg.ts";
import { notebookNamed } from "../../lib/disk/known-notebooks.ts";
import { readLog } from "../../lib/index.ts";
import { chartsIn, toDraw } from "../../lib/page/drawing.ts";
import { layOut } from "../../lib/page/lay-out.ts";
import { demoLogsToRepeat } from "../browser/demo-pages.ts";
import { built } from "../cli/mullbook.ts";

await built();

test.each(demoLogsToRepeat().map((log) => [`${log.notebook}, ${log.name}`, log] as const))(
  "%s: every chart, at one width or the other",
  async (_, { notebook, name, text, files }) => {
    const { value } = readLog(text, { name, files });
    const laid = layOut((await notebookNamed(notebook)).run(value!));
    for (const [i, chart] of chartsIn(laid).entries()) {
      const both = [toDraw(chart, "wide"), toDraw(chart, "narrow")];
      for (const { spec, key } of process.env.DEMOS === "all" ? both : both.slice(i % 2, (i % 2) + 1)) {
        const [code, walked] = [await vegaSvg(spec), await vegaSvgWithoutCode(spec)];
        expect(walked === code, key).toBe(true);
        expect(code).toContain("<path");
      }
    }
  },
);
