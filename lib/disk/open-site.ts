// What the server of an opened log answers: the list of pages, a page, a save, a stream.

import { randomBytes } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import { basename } from "node:path";
import { tooMuch, unreadableRequest } from "../log/complaints-save.ts";
import type { Log, LogText } from "../log/types.ts";
import type { LiveScripts } from "../page/live-html.ts";
import type { OtherPage } from "../page/live-setup.ts";
import type { Notebook } from "../page/notebook.ts";
import { type Files, filesAt, markOf } from "./open-files.ts";
import { indexHtml, LIST_QUESTION } from "./open-index.ts";
import { noPage, openedPage } from "./open-page.ts";
import { type Surveyed, survey } from "./open-survey.ts";
import { isRefusal, type Refusal } from "./refusal.ts";
import { saveLog } from "./save.ts";
import { refused } from "./save-messages.ts";
import { readSaveRequest } from "./save-request.ts";
import type { Answer, Handle } from "./serve.ts";
import { bodyOf } from "./serve-body.ts";
import { streams } from "./serve-events.ts";

export interface Site {
  readonly handle: Handle;
  /** Paths of the log and of the CSV files that it names at the moment. */
  readonly paths: () => readonly string[];
  /** Finds out which notebooks have something to say, so that the first list is there at once. */
  prepare(): void;
  /** To be called when the files may have been changed by somebody else. */
  lookAgain(): void;
  close(): void;
}

export interface SiteOf {
  /** Of the log. */
  readonly path: string;
  readonly files: Files;
  readonly notebooks: readonly Notebook[];
  /** "/<secret>/", known once the server listens. */
  readonly root: () => string;
  /** What makes its page live; undefined where it is shown as written. */
  readonly scriptsOf: (notebook: Notebook) => LiveScripts | undefined;
  /** In words, why a notebook threw. */
  readonly failed: (notebook: Notebook, error: unknown) => Refusal;
}

/** Of a notebook's page, behind the secret: in letters that no browser writes otherwise, as the door wants them. */
export function pageAddress(name: string): string {
  return `pages/${/^[a-z0-9-]+$/.test(name) ? name : "own"}`;
}

export function siteOf({ path, files, notebooks, root, failed, scriptsOf }: SiteOf): Site {
  const open = streams();
  /** What each page that was handed out knows of the files: the mark of their texts. */
  const known = new Map<string, string>();
  let now: Pick<Files, "texts" | "mark"> = files;
  let paths = files.paths;
  let list: { readonly mark: string; readonly surveyed: Promise<readonly Surveyed[]> } | undefined;
  let others: readonly Surveyed[] = [];

  const tell = (page: string) => {
    if (known.get(page) !== now.mark && open.send(page, "changed", { texts: now.texts }))
      known.set(page, now.mark);
  };
  const isNow = (texts: readonly LogText[]) => {
    now = { texts, mark: markOf(texts) };
    for (const page of known.keys()) tell(page);
  };
  /** Reads the files anew; the open pages hear of what is new. What is away for a moment comes back. */
  const look = () => {
    const read = filesAt(path);
    if (isRefusal(read)) return read;
    paths = read.paths;
    if (read.mark !== now.mark) isNow(read.texts);
    return read;
  };

  const hrefOf = (name: string) => `${root()}${pageAddress(name)}`;
  const surveyed = async (mark: string, log: Log): Promise<readonly Surveyed[]> => {
    if (list?.mark !== mark) list = { mark, surveyed: survey(log, notebooks) };
    others = await list.surveyed;
    return others;
  };

  const index = async (): Promise<Answer> => {
    const read = look();
    if (isRefusal(read))
      return html(await noPage(basename(path), [read.refused, read.remedy ?? ""], []), 404);
    if (!read.log) return html(await noPage(basename(path), [NO_LOG], read.issues));
    return html(await indexHtml(read.log, await surveyed(read.mark, read.log), hrefOf));
  };

  const page = async (notebook: Notebook): Promise<Answer> => {
    const read = look();
    if (isRefusal(read))
      return html(await noPage(notebook.title, [read.refused, read.remedy ?? ""], []), 404);
    if (!read.log) return html(await noPage(notebook.title, [NO_LOG], read.issues));
    const id = randomBytes(8).toString("hex");
    known.set(id, read.mark);
    try {
      const keep = {
        kind: "server" as const,
        save: `${root()}save/${id}`,
        events: `${root()}events/${id}`,
        others: otherPages(notebook, others, root(), hrefOf),
      };
      const { log, issues, texts } = read;
      return html(await openedPage({ notebook, log, issues, texts, keep, scripts: scriptsOf(notebook) }));
    } catch (error) {
      const { refused, remedy = "" } = failed(notebook, error);
      return html(await noPage(notebook.title, [refused, remedy], read.issues), 500);
    }
  };

  const save = async (id: string, request: IncomingMessage): Promise<Answer> => {
    const type = request.headers["content-type"] ?? "";
    if (!/^application\/json\s*(;\s*charset=utf-8\s*)?$/i.test(type)) return { status: 415 };
    const body = await bodyOf(request);
    if (typeof body !== "string")
      return json(body.status, refused(body.status === 413 ? tooMuch() : unreadableRequest()));
    const asked = readSaveRequest(body);
    if ("kind" in asked) return json(400, asked);
    const saved = saveLog(path, asked);
    if (saved.kind === "refused") return json(422, saved);
    const texts = saved.kind === "saved" ? saved.texts : saved.theirs;
    known.set(id, markOf(texts));
    isNow(texts);
    return json(saved.kind === "saved" ? 200 : 409, saved);
  };

  const events = (id: string, response: ServerResponse): undefined => {
    open.open(id, response);
    tell(id);
  };

  const handle: Handle = async (address, request, response) => {
    const [kind = "", word = "", ...more] = address.split("/");
    const notebook = notebooks.find(({ name }) => pageAddress(name) === address);
    const isPage = (kind === "save" || kind === "events") && known.has(word);
    if (more.length > 0 || !(address === "" || notebook || isPage)) return { status: 404 };
    const method = kind === "save" ? "POST" : "GET";
    if (request.method !== method) return { status: 405, allow: method };
    if (notebook) return page(notebook);
    if (kind === "save") return save(word, request);
    return kind === "events" ? events(word, response) : index();
  };
  const lookAgain = () => {
    look();
  };
  const prepare = () => {
    if (files.log) surveyed(files.mark, files.log);
  };
  return { handle, paths: () => paths, prepare, lookAgain, close: () => open.close() };
}

/** The list of all, and those that have something to say. */
function otherPages(
  { name }: Notebook,
  surveyed: readonly Surveyed[],
  root: string,
  hrefOf: (name: string) => string,
): OtherPage[] {
  const full = surveyed.filter(({ notebook, says }) => says !== undefined && notebook.name !== name);
  return [
    { name: "All pages of this log", href: root, question: LIST_QUESTION },
    ...full.map(({ notebook, question }) => ({
      name: notebook.title,
      href: hrefOf(notebook.name),
      question,
    })),
  ];
}

const NO_LOG = "The file cannot be read as a log. Mend it in a text editor and load this page again.";

function html(body: string, status = 200): Answer {
  return { status, type: "text/html", body };
}

function json(status: number, value: unknown): Answer {
  return { status, type: "application/json", body: JSON.stringify(value) };
}
