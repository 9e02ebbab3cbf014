// Which notebooks a log has something to say with.

import { readLog } from "../log/read-log.ts";
import type { Log } from "../log/types.ts";
import { layOut } from "../page/lay-out.ts";
import type { Notebook } from "../page/notebook.ts";
import { plainText } from "../page/visible.ts";

export interface Surveyed {
  readonly notebook: Notebook;
  readonly question: string;
  /** The first sentence of its answer; undefined where it says what it says to an empty log, or fails. */
  readonly says: string | undefined;
  /** The hazards that its page begins with. */
  readonly hazards: readonly string[];
}

/** Tries each notebook on the log, and on a log that holds nothing, for what it says then is nothing said. */
export async function survey(log: Log, notebooks: readonly Notebook[]): Promise<Surveyed[]> {
  const found: Surveyed[] = [];
  for (const notebook of notebooks) {
    found.push(surveyed(notebook, log));
    // Requests are answered in between.
    await new Promise((resolve) => setImmediate(resolve));
  }
  return found;
}

function surveyed(notebook: Notebook, log: Log): Surveyed {
  const asked = notebook.question;
  try {
    const page = notebook.run(log);
    const answer = page.answer.map(plainText);
    const question = asked ?? plainText(page.question);
    const none = answer.length === 0 || answer.join("\n") === answerToNothing(notebook);
    return {
      notebook,
      question,
      says: none ? undefined : answer[0],
      hazards: none ? [] : layOut(page).hazards,
    };
  } catch {
    // Its own page tells what fails.
    return { notebook, question: asked ?? notebook.title, says: undefined, hazards: [] };
  }
}

function answerToNothing(notebook: Notebook): string | undefined {
  const { value } = readLog("format: 1\n", { name: "empty.yaml" });
  try {
    return value && notebook.run(value).answer.map(plainText).join("\n");
  } catch {
    return undefined;
  }
}
