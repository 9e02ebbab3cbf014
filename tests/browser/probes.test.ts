// The probes that judge the pages, on pages whose faults are known.

import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { contrasts } from "./contrast.ts";
import { drawnWords } from "./drawn-text.ts";
import { opened } from "./open-page.ts";

const figure = (inside: string): string =>
  `<!doctype html><title>probe</title><figure id="f"><div class="wide"><svg width="200" height="100" viewBox="0 0 400 200" font-family="monospace">${inside}</svg></div></figure>`;

describe.skipIf(withoutBrowser)("the probes", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  const look = async <T>(html: string, probe: () => T): Promise<T> =>
    (await opened(browser, html, {}, (tab) => tab.evaluate(probe))).seen as T;
  const words = async (html: string) =>
    (await opened(browser, html, {}, (tab) => tab.evaluate(drawnWords, 1))).seen;

  // WCAG 2.2 gives black on white 21 : 1. That #767676 stands 4.54 : 1 and #777777 4.48 : 1 off white is widely
  // quoted by those who teach it (from memory).
  test("contrast is that of WCAG, in text and in drawings, on what really lies behind", async () => {
    const page = `<!doctype html><title>probe</title><body style="background:#fff"><p style="color:#767676">a</p><p style="color:#777">b</p>
      <p style="color:#000">c</p><p style="color:rgb(0 0 0 / .5)">d</p>
      <svg width="200" height="60"><rect width="100" height="60" fill="#000"/><text x="40" y="30" fill="#fff">e</text>
      <text x="140" y="30" fill="#fff">f</text><rect x="10" width="20" height="60" fill="#fff" fill-opacity=".5"/><text x="15" y="30" fill="#808080">g</text></svg>`;
    const ratios = Object.fromEntries((await look(page, contrasts)).map(({ said, ratio }) => [said, ratio]));
    expect(ratios.a).toBeCloseTo(4.54, 2);
    expect(ratios.b).toBeCloseTo(4.48, 2);
    expect(ratios.c).toBeCloseTo(21, 10);
    expect(ratios.d).toBeGreaterThan(3.9);
    expect(ratios.d).toBeLessThan(4.05);
    expect(ratios.e).toBeCloseTo(21, 10);
    expect(ratios.f).toBeCloseTo(1, 10);
    expect(ratios.g).toBeCloseTo(1, 1);
  });

  test("words that overlap, leave the drawing or shrink with it are found", async () => {
    const [found] = await words(
      figure(
        '<text x="10" y="50" font-size="24">one</text><text x="30" y="55" font-size="24">two</text><text x="380" y="150" font-size="24">three</text>',
      ),
    );
    expect(found).toMatchObject({ figure: "f", shown: ["wide"], count: 3, cut: ["three"], smallestPx: 12 });
    expect(found!.overlaps.map((words) => words.slice(0, 15))).toEqual(['"one" and "two"']);
  });

  test("words apart and whole are left in peace, turned ones too", async () => {
    const [found] = await words(
      figure(
        '<text x="10" y="50" font-size="24">one</text><text x="10" y="90" font-size="24">two</text><text transform="translate(200,150) rotate(-90)" font-size="30">up</text>',
      ),
    );
    expect(found).toMatchObject({ count: 3, cut: [], overlaps: [], smallestPx: 12 });
  });

  test("a page that asks for a file or complains is caught", async () => {
    const page =
      '<!doctype html><title>probe</title><img src="http://else.invalid/x.png"><script>console.error("oh"); throw new Error("no")</script>';
    const { complaints } = await opened(browser, page, {}, (tab) => tab.waitForLoadState("load"));
    expect(complaints).toContain("request: http://else.invalid/x.png");
    expect(complaints).toContain("console error: oh");
    expect(complaints).toContain("error: no");
  });
});
