// Pages of our own notebooks are drawn without the drawing library: every chart of every demo log, as it is and with
// figures changed at random, is a plain one, and as Vega draws it. The logs are invented.

import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { plainSvg } from "../../lib/chart/plain-svg.ts";
import { vegaSvg } from "../../lib/chart/svg.ts";
import { logOutline, type Notebook, type OutlineNode, readLog } from "../../lib/index.ts";
import { chartsIn, toDraw } from "../../lib/page/drawing.ts";
import { layOut } from "../../lib/page/lay-out.ts";
import { type DemoLog, demoLogsToRepeat } from "../browser/demo-pages.ts";
import { type Seeded, seeded } from "../seeded.ts";

function valuesIn(nodes: readonly (OutlineNode | undefined)[]): OutlineNode[] {
  return nodes.flatMap((node) => {
    if (!node) return [];
    if (node.kind === "value") return [node];
    return valuesIn(node.kind === "group" ? node.parts : node.rows.flat());
  });
}

const turns: readonly ((figure: string) => string)[] = [
  (figure) => figure.replace(/\d(?=\D*$)/, (digit) => String((Number(digit) + 3) % 10)),
  (figure) => figure.replace(/\d+(\.\d+)?/, (number) => String(Number(number) * 10)),
  (figure) => figure.replace(/\d+(\.\d+)?/, (number) => String(Number(number) / 7)),
  () => "0",
  () => "",
];

function turned({ name, text }: DemoLog, random: Seeded): string {
  const figures = valuesIn(logOutline([{ name, text }])).flatMap(({ place, ...node }) =>
    node.kind === "value" && /\d/.test(node.text) && place.file === name ? [{ place, text: node.text }] : [],
  );
  const chosen = new Set(Array.from({ length: 3 }, () => random.pick(figures)));
  return [...chosen]
    .sort((a, b) => b.place.offset! - a.place.offset!)
    .reduce((now, { place: { offset = 0, length = 0 }, text: figure }) => {
      return now.slice(0, offset) + random.pick(turns)(figure) + now.slice(offset + length);
    }, text);
}

test.each(demoLogsToRepeat().map((log) => [`${log.notebook}, ${log.name}`, log] as const))(
  "%s: every chart at both widths, also of changed logs",
  async (_, log) => {
    const random = seeded(log.text.length);
    const path = pathToFileURL(join(import.meta.dirname, "..", "..", "notebooks", `${log.notebook}.ts`)).href;
    const { default: notebook } = (await import(path)) as { readonly default: Notebook };
    let drawn = 0;
    for (let i = 0; i < 4; i++) {
      const { value } = readLog(i === 0 ? log.text : turned(log, random), {
        name: log.name,
        files: log.files,
      });
      if (value === undefined) continue;
      const specs = chartsIn(layOut(notebook.run(value))).flatMap((chart) => [
        toDraw(chart, "wide"),
        toDraw(chart, "narrow"),
      ]);
      const plain = specs.map(({ spec }) => plainSvg(spec));
      expect(plain).not.toContain(undefined);
      drawn += plain.length;
      const one = random.integer(0, specs.length - 1);
      if (i > 0 && specs[one]) expect(plain[one]).toBe(await vegaSvg(specs[one].spec));
    }
    expect(drawn > 0).toBe(!["guide", "recipe"].includes(log.notebook));
  },
);
