// A log whose names and notes are markup: the page shows them as text, and its policy stands.

import { createHash } from "node:crypto";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { written } from "./demo-pages.ts";
import { opened, openFolds } from "./open-page.ts";

const names = {
  image: "<img src=x onerror=alert(1)>",
  styled: "</style><script>alert(2)</script>",
  drawing: '"/></text></svg><svg onload=alert(3)><text x="',
  title:
    "</title></style><script>alert(4)</script><meta http-equiv=refresh content=0;url=http://evil.invalid/>",
  scale: "--><iframe srcdoc='<script>alert(5)</script>'></iframe>",
  set: "<a href=javascript:alert(6)>set</a>",
  founder: "<base href=http://evil.invalid/><link rel=stylesheet href=http://evil.invalid/a.css>",
};
const quoted = (text: string): string => JSON.stringify(text);

/** Invented, as are all its figures. */
const sieved = (portion: string, no50: number) => `
      - date: 2026-05-02
        portion: ${portion}
        repeat of: grab
        scale: ${quoted(names.scale)}
        sieve set: ${quoted(names.set)}
        washed: yes
        start: 50 g
        retained: { No. 40: 2.1, No. 50: ${no50}, No. 70: 18.2, No. 100: 13.0, No. 140: 5.3, No. 200: 1.2, pan: 0.3 }`;
const log = `format: 1
title: ${quoted(names.title)}
founder: ${quoted(names.founder)}
invented: yes
metal: aluminium
bond: bentonite
scales:
  ${quoted(names.scale)}: { reads to: 0.1 g, within: 0.2 g }
sieve sets:
  ${quoted(names.set)}: { frame: 200 mm, checked: no }
sands:
${[names.image, names.styled, names.drawing]
  .map(
    (name, k) =>
      `  ${quoted(name)}:\n    state: new\n    sievings:${sieved("A", 9.5 + k / 10)}${sieved("B", 9.6 + k / 10)}`,
  )
  .join("\n")}
`;

const { value, issues } = readLog(log, { name: "<b>hostile</b>.yaml" });
const { html } = await written("grain-fineness", value!, issues);

test("the log is read, so that its names reach the page", () => {
  expect(value?.sands.map(({ name }) => name)).toEqual([names.image, names.styled, names.drawing]);
  expect(value?.sands.every(({ sievings }) => sievings.every(({ usable }) => usable))).toBe(true);
});

test("the policy stands in the head before any word of the founder, and knows the style by its hash", () => {
  const policies = [...html.matchAll(/<meta http-equiv="Content-Security-Policy" content="([^"]*)">/g)];
  expect(policies.length).toBe(1);
  expect(policies[0]!.index).toBeLessThan(html.indexOf("<title>"));
  const styles = [...html.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, style]) => style!);
  expect(styles.length).toBe(1);
  const hash = createHash("sha256").update(styles[0]!).digest("base64");
  expect(policies[0]![1]).toBe(
    `default-src 'none'; style-src 'sha256-${hash}'; img-src data:; base-uri 'none'; form-action 'none'`,
  );
});

describe.skipIf(withoutBrowser)("the page of a hostile log in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each([1200, 360])("%d px: every name is text; nothing runs, loads or leaves", async (width) => {
    const { seen, complaints } = await opened(browser, html, { width }, async (tab) => {
      await openFolds(tab);
      await tab.waitForTimeout(300);
      return tab.evaluate(() => ({
        title: document.title,
        words: document.body.textContent ?? "",
        drawn: [...document.querySelectorAll("figure text")].map((text) => text.textContent ?? "").join("\n"),
        strange: [
          ...document.querySelectorAll(
            "script, iframe, img, base, link, object, embed, form, foreignObject, image, use",
          ),
          ...document.querySelectorAll("a:not([href^='#']), meta[http-equiv=refresh], body style"),
        ].map((element) => element.outerHTML),
        handlers: [...document.querySelectorAll("*")]
          .flatMap((element) => [...element.attributes])
          .map(({ name }) => name)
          .filter((name) => name.startsWith("on")),
        ink: getComputedStyle(document.querySelector(".answer")!).borderLeftWidth,
        sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      }));
    });
    expect(complaints).toEqual([]);
    expect(seen).toMatchObject({ strange: [], handlers: [], ink: "3px", sideways: 0 });
    expect(seen.title).toContain(names.title);
    for (const name of Object.values(names)) expect(seen.words).toContain(name);
    expect(seen.drawn).toContain("<img src=x");
  });

  test("a script that got into the page would not run", async () => {
    const { seen, complaints } = await opened(browser, html, {}, async (tab) =>
      tab.evaluate(() => {
        const script = document.createElement("script");
        script.textContent = "document.title = 'it ran'";
        document.body.append(script);
        const image = document.createElement("img");
        image.src = "http://evil.invalid/pixel.png";
        document.body.append(image);
        return document.title;
      }),
    );
    expect(seen).not.toBe("it ran");
    expect(complaints.length).toBeGreaterThan(0);
    expect(complaints.every((one) => one.includes("Content Security Policy"))).toBe(true);
  });
});
