// Saving from a page that is a file by itself: the log is handed over as a download.

import type { LogText } from "../log/types.ts";
import { h } from "./edit-dom.ts";
import type { Session } from "./session.ts";

/** The log always, a CSV file only where it was changed. */
export function textsToHandOver(base: readonly LogText[], texts: readonly LogText[]): readonly LogText[] {
  return texts.filter(({ name, text }, i) => i === 0 || text !== base.find((one) => one.name === name)?.text);
}

/** The page cannot tell where the copy goes: what is handed over counts as saved from then on. */
export async function keepCopy(session: Session, say: (text: string) => void): Promise<void> {
  const files = textsToHandOver(session.base, session.texts);
  await handOver(files);
  session.saved(session.texts);
  say(
    `${files.map(({ name }) => name).join(", ")} handed over as a download. Put it in the old file's place.`,
  );
}

/** Each as a file of its own name, byte for byte. */
export async function handOver(files: readonly LogText[]): Promise<void> {
  for (const [i, { name, text }] of files.entries()) {
    // Browsers let a second download through only after a moment.
    if (i > 0) await new Promise((done) => setTimeout(done, 300));
    const address = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
    const link = h("a", { href: address, download: name, hidden: true });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  }
}
