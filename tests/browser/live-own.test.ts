// A founder's own notebook as a live page, and a log that is all markup: what is typed into it is text.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { built, mullbook, mullbookProcess, temporaryFolder } from "../cli/mullbook.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { change, openedLive, wake } from "./open-live.ts";

const LOG = `format: 1
title: "</title></script><script>alert(1)</script>"
invented: yes
founder: "<img src=x onerror=alert(2)>"
sands:
  "<svg onload=alert(3)>":
    state: new
    sievings:
      - { date: 2026-05-02, washed: yes, start: 50 g, retained: { No. 40: 2.1, No. 50: 9.5, No. 70: 18.2, No. 100: 13.0, No. 140: 5.3, No. 200: 1.2, pan: 0.3 } }
`;
const HELPER = `export const heaviest = (masses: readonly number[]): number => Math.max(...masses);\n`;
const OWN = `import { notebook } from "mullbook";
import { heaviest } from "./helper.ts";

export default notebook("Heaviest sieve", (log) => ({
  question: "What does the heaviest sieve hold?",
  answer: log.sands.map(({ name, sievings }) =>
    name + ": " + heaviest(sievings[0]!.retained.map(({ mass }) => mass.value)) + " g"),
  sections: [],
}));
`;

function folderWith(scripts: Readonly<Record<string, string>>): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "log.yaml"), LOG);
  for (const [name, text] of Object.entries(scripts)) writeFileSync(join(folder, name), text);
  return folder;
}

beforeAll(built, 180_000);

test("a script that asks for the disk is refused for a live page, with the line, and runs for a written one", async () => {
  const cwd = folderWith({
    "disk.ts": `import { sep } from "node:path";\n${OWN}console.error(sep);\n`,
    "helper.ts": HELPER,
  });
  const run = mullbookProcess(["write", "disk.ts", "log.yaml", "--live"], { cwd });
  expect(run).toMatchObject({ code: 2, out: "" });
  expect(run.err).toContain('disk.ts:1:21: "node:path" is part of node; a live page has no disk');
  expect(mullbookProcess(["write", "disk.ts", "log.yaml"], { cwd }).out).toBe("log-heaviest-sieve.html\n");
});

test("--live goes with no other format", async () => {
  const cwd = folderWith({});
  const run = await mullbook(["write", "grain-fineness", "log.yaml", "--live", "--as", "csv"], { cwd });
  expect(run.code).toBe(2);
  expect(run.err).toContain("--live makes an HTML page");
});

describe.skipIf(withoutBrowser)("in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(["own", "grain-fineness"])(
    "%s: an edit is worked out, and markup in it is text",
    async (name) => {
      const cwd = folderWith({ "own.ts": OWN, "helper.ts": HELPER });
      const run = mullbookProcess(["write", name === "own" ? "own.ts" : name, "log.yaml", "--live"], { cwd });
      const html = readFileSync(join(cwd, run.out.trim()), "utf8");
      const at = (part: string, text: string) => ({
        file: "log.yaml",
        offset: LOG.indexOf(part),
        length: part.length,
        text,
      });
      const evil = `"/><iframe srcdoc='<script>alert(4)</script>'></iframe><script>alert(5)</script>`;
      const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
        await wake(tab);
        await change(tab, [at("18.2", "19.25"), at('"<img src=x onerror=alert(2)>"', evil)]);
        return tab.evaluate(() => ({
          words: document.body.textContent ?? "",
          strange: [
            ...document.querySelectorAll("img, iframe, object, embed, form, foreignObject, body style"),
            ...document.querySelectorAll("main script, header script, footer script"),
          ].map((element) => element.outerHTML),
          handlers: [...document.querySelectorAll("*")]
            .flatMap((element) => [...element.attributes])
            .filter((attribute) => attribute.name.startsWith("on")).length,
        }));
      });
      expect(complaints).toEqual([]);
      expect(seen).toMatchObject({ strange: [], handlers: 0 });
      expect(seen.words).toContain("<svg onload=alert(3)>");
      expect(seen.words).toContain("<iframe srcdoc='<script>alert(4)</script>'></iframe>");
      if (name === "own") expect(seen.words).toContain("<svg onload=alert(3)>: 19.25 g");
    },
  );
});
