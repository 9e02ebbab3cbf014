// Finds a Chromium for the tests that look at pages.

import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const USUAL_PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** The browser named by CHROMIUM, else the first of the usual places; undefined where there is none. */
export const chromiumPath: string | undefined = [process.env.CHROMIUM ?? "", ...USUAL_PLACES].find(
  (path) => path !== "" && existsSync(path),
);

/**
 * True where browser tests are to be skipped: no browser on a founder's machine. On CI nothing is skipped, so a
 * missing browser fails there.
 */
export const withoutBrowser: boolean = chromiumPath === undefined && !process.env.CI;

if (withoutBrowser) {
  console.warn(
    "Browser tests are skipped: no Chromium. Install one (Debian: apt-get install chromium) or set CHROMIUM to its path.",
  );
}

let shared: Promise<Browser> | undefined;

/** One for all files that a worker tests, one after the other; nobody closes it, it ends with the worker. */
export function openBrowser(): Promise<Browser> {
  shared ??= launched();
  return shared;
}

/** One of its own, for whoever closes it. */
export async function launched(): Promise<Browser> {
  if (chromiumPath === undefined) {
    throw new Error(
      "no Chromium: install one (Debian: apt-get install chromium) or set CHROMIUM to its path",
    );
  }
  return chromium.launch({
    executablePath: chromiumPath,
    args: ["--headless", "--no-sandbox", "--disable-gpu"],
  });
}
