// A live page may not run code made of text: there the drawings are walked through, and come out the same to the letter.

import { expect, test } from "vitest";
import { chartSvg, chartSvgWithoutCode } from "../../lib/chart/svg.ts";
import { notebookNamed } from "../../lib/disk/known-notebooks.ts";
import { readLog } from "../../lib/index.ts";
import { chartsIn, toDraw } from "../../lib/page/drawing.ts";
import { layOut } from "../../lib/page/lay-out.ts";
import { demoLogs } from "../browser/demo-pages.ts";
import { built } from "../cli/mullbook.ts";

await built();

test.each(demoLogs().map((log) => [`${log.notebook}, ${log.name}`, log] as const))(
  "%s: every chart, at both widths",
  async (_, { notebook, name, text, files }) => {
    const { value } = readLog(text, { name, files });
    const laid = layOut((await notebookNamed(notebook)).run(value!));
    for (const chart of chartsIn(laid)) {
      for (const { spec, key } of Object.values(toDraw(chart))) {
        const [code, walked] = [await chartSvg(spec), await chartSvgWithoutCode(spec)];
        expect(walked === code, key).toBe(true);
        expect(code).toContain("<path");
      }
    }
  },
);
