// Saving into the log itself, through the server that the page came from.

import { noAnswer } from "../log/complaints-save.ts";
import type { LogText } from "../log/types.ts";
import type { LiveKeep } from "../page/live-setup.ts";
import type { Notices } from "./edit-notice.ts";
import { takeTheirs } from "./keep-conflict.ts";
import { handOver, textsToHandOver } from "./keep-copy.ts";
import type { Session } from "./session.ts";

type Answer =
  | { readonly kind: "saved"; readonly texts: readonly LogText[] }
  | { readonly kind: "changed"; readonly theirs: readonly LogText[] }
  | { readonly kind: "refused"; readonly message: string; readonly remedy?: string };

export interface ServerKeepParts {
  readonly session: Session;
  readonly notices: Notices;
  readonly keep: LiveKeep & { readonly kind: "server" };
  say(text: string): void;
}

/** What Save does; the page also follows what is changed elsewhere. */
export function keepOnServer({ session, notices, keep, say }: ServerKeepParts): () => Promise<void> {
  const copy = {
    says: "Save a copy instead",
    press: () => void handOver(textsToHandOver(session.base, session.texts)),
  };
  const changed = (theirs: readonly LogText[]): void =>
    takeTheirs(session, notices, theirs, `${session.base[0]?.name ?? "The log"} was changed elsewhere.`);

  const events = new EventSource(keep.events);
  events.addEventListener("changed", (event) => {
    const read = JSON.parse((event as MessageEvent<string>).data) as { readonly texts?: readonly LogText[] };
    if (read.texts) changed(read.texts);
  });

  return async () => {
    const sent = session.texts;
    const answer = await send(keep.save, { base: session.base, texts: sent });
    if (answer.kind === "changed") return changed(answer.theirs);
    if (answer.kind === "refused") {
      const what = answer.remedy === undefined ? answer.message : `${answer.message} ${answer.remedy}`;
      return notices.show("saving", `Not saved. ${what}`, [copy]);
    }
    // Edits that were made while it was written stay edits.
    session.saved(sent);
    // What was told of changes that were not saved yet holds no more.
    for (const kind of ["saving", "elsewhere", "draft"]) notices.drop(kind);
    say(`Saved into ${sent[0]?.name ?? "the log"}.`);
  };
}

async function send(address: string, body: unknown): Promise<Answer> {
  try {
    const response = await fetch(address, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    const answer = (await response.json()) as Partial<Answer>;
    if (answer.kind === "saved" || answer.kind === "changed" || answer.kind === "refused")
      return answer as Answer;
  } catch {
    // Told below.
  }
  const { message, remedy = "" } = noAnswer();
  return { kind: "refused", message, remedy };
}
