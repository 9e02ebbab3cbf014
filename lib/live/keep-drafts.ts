// Drafts of this page: kept while the log is edited, found again after a reload, thrown away on wish.

import type { LogText } from "../log/types.ts";
import { type Draft, draftKey, dropDraft, findDraft, keepDraft } from "./drafts.ts";
import type { Notices } from "./edit-notice.ts";
import { sameTexts } from "./keep-conflict.ts";
import { handOver, textsToHandOver } from "./keep-copy.ts";
import { mergedTexts } from "./keep-merge.ts";
import type { Session } from "./session.ts";

const storage = (): Storage => localStorage;
/** Between a change and its draft. */
const PAUSE_MS = 300;

/** from: what the page will hold after a reload. */
export function followDrafts(session: Session, notices: Notices, from: () => readonly LogText[]): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let told = false;
  /** Where the draft of this page lies. */
  let lies: string | undefined;
  const keep = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    const base = from();
    if (keepDraft(storage, base, session.texts)) {
      // After a save the draft begins from another text; the one before would come back as changes that are not saved.
      const key = draftKey(base);
      if (lies !== undefined && lies !== key) dropDraft(storage, lies);
      lies = key;
      return;
    }
    if (told) return;
    told = true;
    notices.show(
      "drafts",
      "This browser keeps no drafts: what is not saved is lost when the page is closed.",
    );
  };
  session.subscribe(() => {
    clearTimeout(waiting);
    waiting = setTimeout(keep, PAUSE_MS);
  });
  addEventListener("pagehide", () => waiting !== undefined && keep());
  const draft = findDraft(storage, from());
  if (draft && restore(session, notices, draft, from())) lies = draft.key;
}

/** True where the draft stands in the page now, or has nothing that the file lacks. */
function restore(session: Session, notices: Notices, draft: Draft, from: readonly LogText[]): boolean {
  const own = sameTexts(draft.base, from);
  const texts = own ? draft.texts : mergedTexts(draft.base, draft.texts, from).texts;
  const files = textsToHandOver(draft.base, draft.texts);
  const copy = { says: "Save the draft as a copy", press: () => void handOver(files) };
  if (!texts) {
    notices.show(
      "draft",
      "There is a draft of this log from an earlier visit, but the file was changed in the same lines since.",
      [copy, { says: "Throw the draft away", press: () => dropDraft(storage, draft.key) }],
    );
    return false;
  }
  if (sameTexts(texts, from)) {
    dropDraft(storage, draft.key);
    return true;
  }
  session.replace(texts);
  notices.show(
    "draft",
    "Your changes from an earlier visit are here again; they are not saved in the file.",
    [
      {
        says: "Throw them away",
        press: () => {
          session.replace(from);
          dropDraft(storage, draft.key);
        },
      },
    ],
  );
  return true;
}
