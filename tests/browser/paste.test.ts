// A block from a spreadsheet pasted into rows of a log and of its CSV file: tabs, quoted cells, Windows line ends, and
// decimal commas, which are complained of at their cell.

import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoLogs } from "./demo-pages.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";

const textsOf = (tab: Tab): Promise<string[]> =>
  tab.evaluate(() =>
    (
      globalThis as unknown as { mullbookSession: { texts: readonly { text: string }[] } }
    ).mullbookSession.texts.map(({ text }) => text),
  );

/** As a spreadsheet hands it over, with the focus in a field of the row. */
async function paste(tab: Tab, field: string, text: string): Promise<void> {
  const input = tab.getByRole("textbox", { name: field, exact: true });
  await input.focus();
  await input.evaluate((element, pasted) => {
    const data = new DataTransfer();
    data.setData("text/plain", pasted);
    element.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, text);
  await tab.locator(".live-said", { hasText: "pasted into" }).waitFor();
}

describe.skipIf(withoutBrowser)("pasting from a spreadsheet", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test("into a CSV file and into rows of the log; a decimal comma is told at its cell and mended there", async () => {
    const demo = demoLogs().find(({ notebook }) => notebook === "own-sheets")!;
    const csv = demo.files["swelling.csv"]!;
    const texts = [
      { name: demo.name, text: demo.text },
      { name: "swelling.csv", text: csv },
    ];
    const { seen, complaints } = await openedLive(
      browser,
      await livePage("own-sheets", texts),
      {},
      async (tab) => {
        await wake(tab);
        const fold = (name: RegExp) => tab.locator(".live-panel summary", { hasText: name }).first().click();
        await fold(/^swelling\.csv/);
        await paste(tab, "row 1, bag", '"Alder, ""old"""\tA\t2,05\t25.0\r\nAlder\tB\t1.98\t26.5\r\n');
        const wrong = tab.locator(".live-rows input[aria-invalid=true]");
        await wrong.waitFor();
        const at = {
          field: await wrong.getAttribute("aria-label"),
          value: await wrong.inputValue(),
          told: await tab.locator(".live-row-told").textContent(),
          text: (await textsOf(tab))[1]!,
        };
        await wrong.fill("2.05");
        await wrong.press("Enter");
        await wrong.waitFor({ state: "detached" });
        const mended = (await textsOf(tab))[1]!;
        await fold(/^swelling\.csv/);
        await fold(/^sheets/);
        await fold(/^prices/);
        await fold(/^rows/);
        await paste(tab, "row 2, paid", '21.50\t"25 lb ± 0.3 lb"\r\n9.90\t5.10\r\n');
        return { at, mended, after: await textsOf(tab) };
      },
    );
    expect(complaints).toEqual([]);
    const pasted = (figure: string) =>
      csv
        .replace("Alder,A,2.01,25.5", `"Alder, ""old""",A,${figure},25.0`)
        .replace("Alder,B,1.99,26.0", "Alder,B,1.98,26.5");
    expect(seen.at.field).toBe("row 1, clay (g)");
    expect(seen.at.value).toBe("2,05");
    expect(seen.at.told).toMatch(/row 1, clay \(g\): .*comma/);
    expect(seen.at.text).toBe(pasted('"2,05"'));
    expect([pasted("2.05"), pasted('"2.05"')]).toContain(seen.mended);
    expect(seen.after[0]).toBe(
      demo.text
        .replace("paid: 21.00, mass: 25 lb ± 0.2 lb", "paid: 21.50, mass: 25 lb ± 0.3 lb")
        .replace("paid: 9.80, mass: 5.05", "paid: 9.90, mass: 5.10"),
    );
  });
});
