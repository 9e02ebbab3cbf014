// The only script that a live page runs when it opens: it tells the figures of charts, and waits for somebody to change
// something, then unpacks the rest.
// Bundled by itself, so that it stays short.

import type { LiveStart } from "../page/live-setup.ts";
import { fromBase91 } from "./base91.ts";
import { startCharts } from "./chart-start.ts";
import { draftHead } from "./drafts.ts";
import { heldPresses } from "./held-presses.ts";
import { offerLeavingFirst } from "./leave-first.ts";
import type { MullbookLive } from "./start.ts";

/** What can be changed, and what asks for the log. */
const WAKES = "[data-at],[data-start],[data-leave]";
const setup = JSON.parse(document.getElementById("live-setup")?.textContent ?? "") as LiveStart;

let woken = false;

const wakerOf = ({ target }: Event): HTMLElement | undefined => {
  const element = target instanceof Element ? target.closest(WAKES) : null;
  return element instanceof HTMLElement ? element : undefined;
};
for (const kind of ["pointerdown", "focusin"] as const) {
  document.addEventListener(kind, (event) => {
    if (wakerOf(event)) wake();
  });
}
document.addEventListener("click", (event) => {
  const target = wakerOf(event);
  if (!target) return;
  // What was clicked last is what is done.
  meant = target;
  presses.release();
  wake();
});
document.addEventListener("keydown", (event) => {
  const target = wakerOf(event);
  if (!target) return;
  wake();
  if ("mullbookSession" in globalThis || target.dataset.at === undefined || event.isComposing) return;
  if (presses.hold(event)) event.preventDefault();
});

let meant: HTMLElement | undefined;
const presses = heldPresses();

function wake(): void {
  if (woken) return;
  woken = true;
  document.documentElement.dataset.waking = "";
  start().then(
    () => {
      delete document.documentElement.dataset.waking;
    },
    (error: unknown) => {
      woken = false;
      presses.release();
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
  live.start([runtime, notebook], () => ({ clicked: meant, presses: presses.release() }));
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
