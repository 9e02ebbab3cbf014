// Opens a live page cut off from the network, wakes it and changes its log, and notes whatever it complains about.

import type { Browser, Page as Tab } from "playwright-core";

const address = "http://page.invalid/";

export interface View {
  readonly width?: number;
}

/** A thread of the page's own is no request: its text is in the page. */
const OWN_THREAD = /^blob:/;

export async function openedLive<T>(
  browser: Browser,
  html: string,
  { width = 1200 }: View,
  look: (tab: Tab) => Promise<T>,
): Promise<{ readonly seen: T; readonly complaints: readonly string[] }> {
  const complaints: string[] = [];
  const tab = await browser.newPage({ viewport: { width, height: 900 } });
  try {
    tab.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
    tab.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
    tab.on("request", (request) => {
      const url = request.url();
      if (url !== address && !OWN_THREAD.test(url)) complaints.push(`request: ${url.slice(0, 200)}`);
    });
    tab.on("dialog", (dialog) => {
      if (dialog.type() !== "beforeunload") complaints.push(`dialog: ${dialog.message()}`);
      void dialog.accept();
    });
    await tab.route("**", (route) =>
      route.request().url() === address
        ? route.fulfill({ body: html, contentType: "text/html; charset=utf-8" })
        : route.abort(),
    );
    await tab.goto(address);
    return { seen: await look(tab), complaints };
  } finally {
    await tab.close();
  }
}

/** As a founder does it: by the button that opens the log. */
export async function wake(tab: Tab): Promise<void> {
  await tab.locator("[data-start]").first().click();
  // Not waitForFunction: it makes code of text, which the page's policy forbids.
  while (!(await tab.evaluate(() => "mullbookSession" in globalThis))) await tab.waitForTimeout(50);
}

export interface Change {
  readonly file: string;
  readonly offset: number;
  readonly length: number;
  readonly text: string;
}

/** Writes each at its place, from the last to the first, and waits until everything is right, the drawings for the other width too. */
export async function change(tab: Tab, changes: readonly Change[]): Promise<readonly string[]> {
  return tab.evaluate(async (wanted) => {
    const { mullbookSession: session } = globalThis as unknown as { mullbookSession: LiveSession };
    const settled = new Promise((resolve) =>
      document.addEventListener("mullbook:drawn", resolve, { once: true }),
    );
    const before = session.texts;
    session.together(() => {
      for (const { text, ...at } of wanted) session.edit({ kind: "write", at, text });
    });
    if (session.texts !== before) await settled;
    return session.texts.map(({ text }) => text);
  }, changes);
}

interface LiveSession {
  readonly texts: readonly { readonly text: string }[];
  together(work: () => void): void;
  edit(edit: { readonly kind: "write"; readonly at: object; readonly text: string }): unknown;
}

export interface Shown {
  readonly title: string;
  /** Words of header, sections and footer, in order, white space made one. */
  readonly words: readonly string[];
  /** Markup of every drawing, wide and narrow. */
  readonly drawings: readonly string[];
}

/** What stands on the page, or in markup of another one, but for what only a live page has. */
export function shownOn(tab: Tab, html?: string): Promise<Shown> {
  return tab.evaluate((other) => {
    const page =
      other === undefined
        ? document
        : new DOMParser().parseFromString(other.replace(/<style>[\s\S]*?<\/style>/, ""), "text/html");
    const whole = page.documentElement.cloneNode(true) as HTMLElement;
    for (const extra of whole.querySelectorAll("[data-live], .live-furniture")) extra.remove();
    const parts = [...whole.querySelectorAll("body > header, main > section, body > footer")];
    return {
      title: page.title,
      words: parts.map((part) => (part.textContent ?? "").replace(/\s+/g, " ").trim()),
      drawings: [...whole.querySelectorAll(".wide, .narrow")].map((place) => place.innerHTML),
    };
  }, html);
}
