// Opens a page as a reader does, cut off from the network, and notes whatever it complains about.

import type { Browser, Page as Tab } from "playwright-core";

const address = "http://page.invalid/";

export interface View {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
}

/** What look() gives, once the page has opened without asking for anything else and without a complaint. */
export async function opened<T>(
  browser: Browser,
  html: string,
  view: View,
  look: (tab: Tab) => Promise<T>,
): Promise<{ readonly seen: T; readonly complaints: readonly string[] }> {
  const complaints: string[] = [];
  const tab = await browser.newPage({
    viewport: { width: view.width ?? 1200, height: view.height ?? 900 },
    colorScheme: view.dark ? "dark" : "light",
  });
  try {
    tab.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
    tab.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
    tab.on("dialog", (dialog) => {
      complaints.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    await tab.route("**", (route) => {
      const url = route.request().url();
      if (url === address) return route.fulfill({ body: html, contentType: "text/html; charset=utf-8" });
      complaints.push(`request: ${url}`);
      return route.abort();
    });
    await tab.goto(address);
    return { seen: await look(tab), complaints };
  } finally {
    await tab.close();
  }
}

export async function openFolds(tab: Tab): Promise<void> {
  await tab.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
}
