// Pages in a real browser: axe-core's rules (WCAG 2.2 A and AA and its best practices), widths, print, policy.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { chartSvg } from "../../lib/chart/svg.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { paletteStyle } from "../../lib/page/palette.ts";
import { inlineSvg } from "../../lib/page/svg-text.ts";
import { samples } from "../chart/samples.ts";
import { samplePage } from "../page/sample-page.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

describe.skipIf(withoutBrowser)("a page in Chromium", () => {
  let browser: Browser;
  let html: string;
  beforeAll(async () => {
    browser = await openBrowser();
    html = await writeHtml(samplePage());
  }, 60_000);

  async function opened(
    options: { width?: number; dark?: boolean; page?: string },
    look: (tab: Tab) => Promise<void>,
  ): Promise<void> {
    const tab = await browser.newPage({
      viewport: { width: options.width ?? 1200, height: 900 },
      colorScheme: options.dark ? "dark" : "light",
    });
    try {
      await tab.setContent(options.page ?? html);
      await look(tab);
    } finally {
      await tab.close();
    }
  }

  test.each([
    { width: 1200, dark: false },
    { width: 1200, dark: true },
    { width: 360, dark: false },
    { width: 360, dark: true },
  ])(
    "breaks no rule of access, $width px, dark: $dark",
    async (how) => {
      await opened(how, async (tab) => {
        await tab.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
        await tab.evaluate(axe);
        const found = (await tab.evaluate(
          "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
        )) as string[];
        expect(found).toEqual([]);
      });
    },
    60_000,
  );

  test.each([360, 480, 640, 641, 800, 1200])("does not scroll sideways at %d px", async (width) => {
    await opened({ width, page: await writeHtml(samplePage({ hostile: true })) }, async (tab) => {
      await tab.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
      expect(await tab.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
    });
  });

  test("shows one drawing of each chart: the narrow one on a phone, the wide one on a desk and on paper", async () => {
    const seen =
      "[...document.querySelectorAll('figure svg')].filter((s) => s.getClientRects().length).map((s) => s.parentElement.className)";
    await opened({ width: 360 }, async (tab) => {
      expect(await tab.evaluate(seen)).toEqual(["narrow", "narrow"]);
      await tab.emulateMedia({ media: "print" });
      expect(await tab.evaluate(seen)).toEqual(["wide", "wide"]);
    });
    await opened({ width: 1200 }, async (tab) => expect(await tab.evaluate(seen)).toEqual(["wide", "wide"]));
  });

  test("opens folds in print, and none before it is asked for; a chart's data only where the reader opened them", async () => {
    const height = (selector: string) =>
      `[...document.querySelectorAll(${JSON.stringify(selector)})].map((x) => x.checkVisibility({ contentVisibilityAuto: true }) && x.getBoundingClientRect().height > 0)`;
    const within = "details.chart-data table, details.fold > p, .finding details .formula";
    await opened({}, async (tab) => {
      expect(await tab.evaluate(height(within))).toEqual([false, false, false, false]);
      await tab.emulateMedia({ media: "print" });
      await tab.evaluate("new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))");
      expect(await tab.evaluate(height(within))).toEqual([false, false, true, true]);
      await tab.evaluate("document.querySelector('details.chart-data').open = true");
      expect(await tab.evaluate(height(within))).toEqual([true, false, true, true]);
    });
  });

  test("prints on white with hatched bands whatever the reader's system likes", async () => {
    const fills =
      "[...new Set([...document.querySelectorAll('.wide [fill^=\"var(--band\"]')].map((x) => getComputedStyle(x).fill))]";
    const ground = "getComputedStyle(document.body).backgroundColor";
    await opened({ dark: true }, async (tab) => {
      expect(await tab.evaluate(ground)).toBe("rgb(25, 29, 32)");
      await tab.emulateMedia({ media: "print" });
      expect(await tab.evaluate(ground)).toBe("rgb(255, 255, 255)");
      expect(await tab.evaluate(fills)).toEqual(['url("#hatch")']);
    });
  });

  test("aligns the figures of a column at the decimal mark, with and without a fraction", async () => {
    // The left edge of the first part behind the whole number is where the decimal mark stands.
    const edges = `[...document.querySelectorAll("section.data table tr")].map((row) => row.cells[2]?.querySelector("[class^=w]")).filter(Boolean).map((part) => Math.round(part.getBoundingClientRect().left * 10) / 10)`;
    await opened({}, async (tab) => {
      const found = (await tab.evaluate(edges)) as number[];
      expect(found.length).toBe(7);
      expect(new Set(found).size).toBe(1);
    });
  });

  test("keeps prose to 68 characters a line", async () => {
    const longest = `(() => {
      const node = document.querySelector("section.data > p");
      const walk = document.createTreeWalker(node, NodeFilter.SHOW_TEXT);
      const lines = new Map();
      for (let text; (text = walk.nextNode()); ) for (let i = 0; i < text.length; i++) {
        const range = document.createRange();
        range.setStart(text, i); range.setEnd(text, i + 1);
        const top = Math.round((range.getClientRects()[0]?.bottom ?? 0) / 8);
        lines.set(top, (lines.get(top) ?? 0) + 1);
      }
      return Math.max(...lines.values());
    })()`;
    await opened({}, async (tab) => {
      const length = await tab.evaluate(longest);
      expect(length).toBeLessThanOrEqual(69); // the space at the end of the line is counted too
      expect(length).toBeGreaterThan(50);
    });
  });

  test.each(["curve-two", "curve-five", "bars-three", "strip"])(
    "the drawing %s, written shorter, is the same picture",
    async (name) => {
      const svg = await chartSvg(samples.find((chart) => chart.name === name)!.spec(720));
      const picture = async (text: string) => {
        let base64 = "";
        const page = `<!doctype html><style>${paletteStyle()}svg{width:720px;display:block}svg text{font-family:sans-serif}</style>${text}`;
        await opened({ width: 740, page }, async (tab) => {
          base64 = (await tab.screenshot()).toString("base64");
        });
        return `data:image/png;base64,${base64}`;
      };
      const [whole, short] = [await picture(svg), await picture(inlineSvg(svg, "a-"))];
      // Of the pixels, how many differ in any channel by more than edges do when they stand a tenth of a pixel elsewhere
      // (seen: 63 of 255, at edges of letters); a shape that is missing or recoloured differs by over 100.
      const differing = `(async () => {
        const [a, b] = await Promise.all([${JSON.stringify(whole)}, ${JSON.stringify(short)}].map(async (source) => {
          const image = new Image();
          image.src = source;
          await image.decode();
          const canvas = document.createElement("canvas");
          [canvas.width, canvas.height] = [image.width, image.height];
          const context = canvas.getContext("2d");
          context.drawImage(image, 0, 0);
          return context.getImageData(0, 0, image.width, image.height).data;
        }));
        return a.length === b.length ? a.filter((value, i) => Math.abs(value - b[i]) > 80).length : -1;
      })()`;
      await opened({ page: "<!doctype html><title>empty</title>" }, async (tab) => {
        expect(await tab.evaluate(differing)).toBe(0);
      });
    },
    30_000,
  );

  test("hostile text runs nothing and the policy lets the page's own style through", async () => {
    const complaints: string[] = [];
    await opened({ page: "<!doctype html><title>empty</title>" }, async (tab) => {
      tab.on("dialog", (dialog) => {
        complaints.push(`dialog: ${dialog.message()}`);
        dialog.dismiss();
      });
      tab.on("console", (message) => complaints.push(message.text()));
      tab.on("request", (request) => complaints.push(`request: ${request.url()}`));
      await tab.setContent(await writeHtml(samplePage({ hostile: true })));
      expect(
        await tab.evaluate(
          "document.scripts.length + document.querySelectorAll('body a:not([href^=\"#\"])').length",
        ),
      ).toBe(0);
      expect(await tab.evaluate("getComputedStyle(document.querySelector('.answer')).borderLeftWidth")).toBe(
        "3px",
      );
    });
    expect(complaints).toEqual([]);
  });
});
