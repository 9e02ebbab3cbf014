// The file was changed by somebody else: edits are carried over where they do not meet the other's, else the founder decides.

import type { LogText } from "../log/types.ts";
import { h } from "./edit-dom.ts";
import type { Notices } from "./edit-notice.ts";
import { counted } from "./edit-words.ts";
import { handOver, textsToHandOver } from "./keep-copy.ts";
import { differences } from "./keep-differences.ts";
import { mergedTexts } from "./keep-merge.ts";
import type { Session } from "./session.ts";

export const sameTexts = (a: readonly LogText[], b: readonly LogText[]): boolean =>
  a.length === b.length && a.every(({ name, text }, i) => name === b[i]?.name && text === b[i].text);

export function takeTheirs(
  session: Session,
  notices: Notices,
  theirs: readonly LogText[],
  fileIs: string,
): void {
  const { base, texts } = session;
  if (sameTexts(theirs, base)) return;
  if (sameTexts(theirs, texts)) {
    session.saved(theirs);
    return;
  }
  const take = (now: readonly LogText[]): void => {
    session.saved(theirs);
    session.replace(now);
  };
  if (sameTexts(base, texts)) {
    take(theirs);
    notices.show("elsewhere", `${fileIs} It is read again here; Undo goes back.`);
    return;
  }
  const { texts: both, meets } = mergedTexts(base, texts, theirs);
  if (both) {
    take(both);
    notices.show(
      "elsewhere",
      `${fileIs} Your changes touch other lines: they are carried over, and not saved yet.`,
    );
    return;
  }
  const list = h("div", {
    class: "live-differences",
    hidden: true,
    tabindex: 0,
    role: "region",
    "aria-label": "Differences",
  });
  notices.show(
    "elsewhere",
    `${fileIs} You changed ${counted(meets.length, "place")} of it too. Nothing is written before you decide.`,
    [
      {
        says: "Save mine as a copy",
        press: () => {
          void handOver(textsToHandOver(theirs, session.texts));
          return true;
        },
      },
      { says: "Take theirs", press: () => take(theirs) },
      {
        says: "Keep mine",
        press: () => {
          take(mergedTexts(base, session.texts, theirs).mineFirst);
          notices.show(
            "elsewhere",
            "Yours stands here, and theirs wherever you changed nothing. It is not saved yet: Save writes it into the log.",
          );
          return true;
        },
      },
      {
        says: "Show the differences",
        press: () => {
          list.hidden = !list.hidden;
          list.replaceChildren(...shownDifferences(theirs, session.texts));
          return true;
        },
      },
    ],
    list,
  );
}

function shownDifferences(theirs: readonly LogText[], mine: readonly LogText[]): HTMLElement[] {
  return differences(theirs, mine).map(({ file, line, before, after }) =>
    h(
      "div",
      {},
      h("p", { class: "live-quiet" }, `${file}, line ${line}`),
      h("pre", {}, h("b", {}, "theirs"), `\n${before.join("\n")}`),
      h("pre", {}, h("b", {}, "mine"), `\n${after.join("\n")}`),
    ),
  );
}
