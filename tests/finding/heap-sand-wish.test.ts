// New sand for a fineness number: none within its own ±, never in the headline past what goes in at once.

import { expect, test } from "vitest";
import { heapMending } from "../../lib/finding/heap-mending.ts";
import { withinTheirDoubt } from "../../lib/finding/heap-sand-wish.ts";
import { beginLog } from "../../lib/log/begin.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { mendFindings } from "../../lib/page/heap-findings.ts";
import heapPage from "../../notebooks/heap.ts";

const starter = beginLog();
const at = starter.indexOf("# trial: {");
const opened =
  starter.slice(0, at).replace("# units: US", "units: US") + starter.slice(at).replace(/^# /gm, "");

function begun(...changes: readonly (readonly [string, string])[]) {
  const text = changes.reduce((all, [from, to]) => {
    expect(all).toContain(from);
    return all.replace(from, to);
  }, opened);
  return readLog(text, { name: "log.yaml" });
}
/** Of its mending alone: the season takes no part in it, and its draws take time. */
const findings = (...changes: readonly (readonly [string, string])[]) =>
  mendFindings(heapMending(begun(...changes).value!, undefined)!, "metric");
const told = (code: string, ...changes: readonly (readonly [string, string])[]) =>
  findings(...changes).find((finding) => finding.code === code);

test("fineness 63 to 60 in 120 kg is told apart, with the most at one mending and what would be thrown out", () => {
  expect(told("heap/mend")!.text).toMatch(
    /^To bring the heap back: [\d.± a-z]* kg of clay from the bag and [\d.± a-z]* g of water\.$/,
  );
  const apart = told("heap/new-sand-apart")!;
  // A tenth of the dry heap: 0.1 × 120 × 0.974 = 11.7 kg, as weighed 11.75.
  expect(apart.text).toContain("12 kg, the most at one mending");
  expect(apart.text).toContain("from 63 to 62.3 (wanted: 60)");
  expect(apart.because[0]).toMatch(/^All the way takes .* of the heap \(dry\) would be thrown out first\.$/);
});

test("a difference within the number's own ± asks for nothing, and ± 2 stands for a ± that is not written", () => {
  for (const [from, size] of [
    ["gfn: 63 ± 3,", "± 3"],
    ["gfn: 62,", "± 2"],
  ] as const) {
    expect(told("heap/new-sand-not-asked", ["gfn: 63,", from])!.text).toContain(size);
    expect(told("heap/new-sand-apart", ["gfn: 63,", from])).toBeUndefined();
  }
  expect(withinTheirDoubt(begun(["gfn: 63,", "gfn: 63 ± 2.9,"]).value!)).toEqual([]);
});

test("so little new sand that it goes in at once stays in the mending, with what would be thrown out", () => {
  const change = ["gfn: 63,", "gfn: 60.2 ± 0.1,"] as const;
  expect(told("heap/mend", change)!.text).toContain("of new sand");
  expect(told("heap/throw-out", change)!.text).toContain("of new sand do");
  expect(told("heap/new-sand-apart", change)).toBeUndefined();
});

test("a US page tells burn-out and mending in pounds, no new sand in its answer, no pour below zero in words", () => {
  const { answer, sections } = heapPage.run(begun().value!);
  expect(JSON.stringify(answer)).toMatch(/lb of burnt sand for each pound of metal/);
  expect(JSON.stringify(answer)).not.toContain("new sand");
  const blocks = sections.flatMap((section) => section.blocks);
  const heap = blocks.flatMap((one) =>
    one.kind === "finding" && one.finding.code.startsWith("heap/")
      ? [one.finding.text, ...(one.finding.because ?? [])]
      : [],
  );
  expect(heap.length).toBeGreaterThan(8);
  expect(heap.filter((text) => /\bkg\b|kilogram/.test(text))).toEqual([]);
  const alts = blocks.flatMap((one) => (one.kind === "chart" ? [one.chart.alt] : [])).join(" ");
  expect(alts).toContain("1 pour ago");
  expect(alts).not.toMatch(/pour [-−]/);
});
