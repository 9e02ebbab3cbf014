// The only script that a live page runs when it opens: it tells the figures of charts, and waits for somebody to change
// something, then unpacks the rest.
// Bundled by itself, so that it stays short.

import type { LiveStart } from "../page/live-setup.ts";
import { fromBase91 } from "./base91.ts";
import { startCharts } from "./chart-start.ts";
import { draftHead } from "./drafts.ts";
import { offerLeavingFirst } from "./leave-first.ts";
import type { Intent, MullbookLive } from "./start.ts";

/** What can be changed, and what asks for the log. */
const WAKES = "[data-at],[data-start],[data-leave]";
const setup = JSON.parse(document.getElementById("live-setup")?.textContent ?? "") as LiveStart;

let woken = false;

for (const kind of ["pointerdown", "focusin", "keydown"] as const) {
  document.addEventListener(kind, (event) => {
    const target = event.target instanceof Element ? event.target.closest(WAKES) : null;
    if (target instanceof HTMLElement) wake({ kind, target, ...keyOf(event) });
  });
}
document.addEventListener("click", (event) => {
  const target = event.target instanceof Element ? event.target.closest(WAKES) : null;
  if (target instanceof HTMLElement) wake({ kind: "click", target });
});

/** What was meant last while the rest was unpacked is what is done. */
let meant: Intent | undefined;

function wake(intent?: Intent): void {
  if (intent?.kind === "click" || intent?.kind === "keydown") meant = intent;
  if (woken) return;
  woken = true;
  document.documentElement.dataset.waking = "";
  start().then(
    () => {
      delete document.documentElement.dataset.waking;
    },
    (error: unknown) => {
      woken = false;
      delete document.documentElement.dataset.waking;
      const box = document.querySelector("#live p");
      if (box)
        box.textContent = `This browser cannot change the page: ${String(error)} It can be read and printed.`;
    },
  );
}

/** What was changed on an earlier visit is shown at once, and so is what somebody else changes in the file. */
function hasNews(): boolean {
  if (setup.keep.kind === "server") return true;
  try {
    const head = draftHead(setup.texts[0]?.name ?? "");
    return Object.keys(localStorage).some((key) => key.startsWith(head));
  } catch {
    return false;
  }
}

offerLeavingFirst(setup.batches, () => "mullbookSession" in globalThis);
afterFirstPicture(startCharts);
if (hasNews()) wake();

/** Once; sooner where somebody points, touches or types before there is a picture. */
function afterFirstPicture(work: () => void): void {
  let begun = false;
  const begin = (): void => {
    if (!begun) work();
    begun = true;
  };
  for (const kind of ["pointerover", "pointerdown", "focusin", "keydown"])
    document.addEventListener(kind, begin, { capture: true, once: true });
  requestAnimationFrame(() => setTimeout(begin));
}

async function start(): Promise<void> {
  const [runtime, notebook] = await Promise.all([unpacked("live-runtime"), unpacked("live-notebook")]);
  run(runtime);
  run(notebook);
  const live = (globalThis as unknown as { readonly mullbookLive?: MullbookLive }).mullbookLive;
  if (!live) throw new Error("its scripts did not run.");
  live.start([runtime, notebook], () => meant);
}

/** Known to the page's policy by its hash. */
function run(text: string): void {
  const script = document.createElement("script");
  script.textContent = text;
  document.body.append(script);
  script.remove();
}

async function unpacked(id: string): Promise<string> {
  if (typeof DecompressionStream === "undefined") throw new Error("it is too old to unpack the scripts.");
  const packed = document.getElementById(id)?.textContent ?? "";
  const bytes = fromBase91(packed.trim());
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).text();
}

function keyOf(event: Event): { readonly key?: string } {
  return event instanceof KeyboardEvent ? { key: event.key } : {};
}
