// The server of an opened log, asked over the wire.

import { mkdirSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request as ask, type IncomingMessage } from "node:http";
import { connect } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { expect, onTestFinished, test } from "vitest";
import { filesAt, withLinked } from "../../lib/disk/open-files.ts";
import { type Site, siteOf } from "../../lib/disk/open-site.ts";
import { isRefusal } from "../../lib/disk/refusal.ts";
import { type Server, serve } from "../../lib/disk/serve.ts";
import { watchFiles } from "../../lib/disk/watch.ts";
import { type LogText, notebook } from "../../lib/index.ts";
import type { LiveSetup } from "../../lib/page/live-setup.ts";
import { folderWith, textsIn, version } from "./saving.ts";

const titles = notebook("Titles", (log) => ({
  question: "What is it called?",
  answer: log.title ? [`It is called ${log.title}.`] : ["It has no name."],
  sections: [],
}));
const empty = notebook("Nothing", () => ({ question: "Is there anything?", answer: ["No."], sections: [] }));
const failing = notebook("Failing", (log) => {
  if (log.title) throw new Error("no such thing");
  return { question: "Does it fail?", answer: [], sections: [] };
});

/** Stand for the real ones: nothing runs here. */
const scripts = { boot: "0", runtime: { packed: "", hash: "" }, notebook: { packed: "", hash: "" } };

interface Opened {
  readonly folder: string;
  readonly server: Server;
  readonly site: Site;
}

async function opened(from: string | readonly LogText[] = version(1), requestMs = 5000): Promise<Opened> {
  const folder = typeof from === "string" ? from : folderWith(from);
  const path = join(folder, "log.yaml");
  const files = filesAt(path);
  if (isRefusal(files)) throw new Error(files.refused);
  let root = "";
  const site = siteOf({
    path,
    files,
    notebooks: [titles, empty, failing],
    root: () => root,
    scriptsOf: () => scripts,
    failed: (_, error) => ({ refused: `It failed: ${error}`, remedy: "Mend it." }),
  });
  const server = await serve(site.handle, { requestMs });
  root = server.root;
  const watcher = watchFiles(() => withLinked(site.paths()), site.lookAgain, { settleMs: 40, pollMs: 200 });
  onTestFinished(async () => {
    watcher.close();
    site.close();
    await server.close();
  });
  return { folder, server, site };
}

interface Answered {
  readonly status: number;
  readonly headers: IncomingMessage["headers"];
  readonly body: string;
}

interface Asking {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

function answered(address: string, { method = "GET", headers = {}, body }: Asking = {}): Promise<Answered> {
  return new Promise((resolve, reject) => {
    const asked = ask(address, { method, headers, agent: false }, (response) => {
      let text = "";
      response.on("data", (part) => {
        text += part;
      });
      response.on("end", () =>
        resolve({ status: response.statusCode!, headers: response.headers, body: text }),
      );
    });
    asked.on("error", reject);
    asked.end(body);
  });
}

/** Sends bytes as they are and gives back the first line of the answer. */
function raw(server: Server, text: string): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect(Number(new URL(server.address).port), "127.0.0.1");
    let said = "";
    socket.on("data", (part) => {
      said += part;
    });
    socket.on("error", () => undefined);
    socket.on("close", () => resolve(said.split("\r\n")[0] ?? ""));
    socket.write(text);
  });
}

const origin = ({ address }: Server) => new URL(address).origin;

/** A page as it was handed out. */
class OpenPage {
  readonly server: Server;
  readonly setup: LiveSetup;

  constructor(server: Server, html: string) {
    this.server = server;
    this.setup = JSON.parse(/id="live-setup">(.*?)<\/script>/s.exec(html)![1]!);
  }

  static async load(server: Server, name = "titles"): Promise<OpenPage> {
    return new OpenPage(server, (await answered(`${server.address}pages/${name}`)).body);
  }

  get keep() {
    const { keep } = this.setup;
    if (keep.kind !== "server") throw new Error("not from a server");
    return {
      save: origin(this.server) + keep.save,
      events: origin(this.server) + keep.events,
      others: keep.others,
    };
  }

  async save(base: readonly LogText[], texts: readonly LogText[]) {
    const { status, body } = await answered(
      this.keep.save,
      post(this.server, JSON.stringify({ base, texts })),
    );
    return { status, answer: JSON.parse(body) as unknown };
  }

  /** The texts of each "changed" that arrives, as they come. */
  listen(): { readonly heard: (readonly LogText[])[]; close(): void } {
    const heard: (readonly LogText[])[] = [];
    const asked = ask(this.keep.events, { agent: false }, (response) => {
      let text = "";
      response.on("data", (part) => {
        text += part;
        for (let end = text.indexOf("\n\n"); end >= 0; end = text.indexOf("\n\n")) {
          const [, data] = /^event: changed\ndata: (.*)$/.exec(text.slice(0, end)) ?? [];
          if (data !== undefined) heard.push((JSON.parse(data) as { readonly texts: LogText[] }).texts);
          text = text.slice(end + 2);
        }
      });
    });
    asked.on("error", () => undefined);
    asked.end();
    return { heard, close: () => asked.destroy() };
  }
}

function post(server: Server, body: string, headers: Readonly<Record<string, string>> = {}): Asking {
  return {
    method: "POST",
    body,
    headers: { Origin: origin(server), "Content-Type": "application/json", ...headers },
  };
}

async function until(holds: () => boolean): Promise<void> {
  for (const end = Date.now() + 10_000; !holds(); await pause(10)) {
    if (Date.now() > end) throw new Error("it did not come to pass within ten seconds");
  }
}

test("an answer lets no other site in, is kept nowhere, and names what its page may do", async () => {
  const { server } = await opened();
  const { status, headers } = await answered(server.address);
  expect(status).toBe(200);
  expect(headers).toMatchObject({
    "content-type": "text/html; charset=utf-8",
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cache-control": "no-store",
    "content-security-policy": "frame-ancestors 'none'",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
  });
  expect(
    Object.keys(headers).filter((name) => /^(access-control|server|x-powered|set-cookie|etag)/.test(name)),
  ).toEqual([]);
});

test("it listens on this machine's own address alone", async () => {
  const { server } = await opened();
  expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/$/);
  const { port } = new URL(server.address);
  for (const host of ["127.0.0.2", "::1"])
    await expect(
      new Promise((resolve, reject) =>
        connect(Number(port), host).once("connect", resolve).once("error", reject),
      ),
    ).rejects.toThrow(/ECONNREFUSED|EADDRNOTAVAIL|EAFNOSUPPORT|ENETUNREACH/);
});

test("the list says what each notebook says of the log; the silent ones come after", async () => {
  const { server } = await opened();
  const { body } = await answered(server.address);
  const [full = "", rest = ""] = body.split("Nothing in the log for these yet");
  expect(full).toContain(`<a href="${server.root}pages/titles">Titles</a>`);
  expect(full).toContain("It is called version 1.");
  expect(full).not.toContain("pages/nothing");
  expect(rest).toContain("pages/nothing");
  expect(rest).toContain("pages/failing");
  const page = await OpenPage.load(server);
  expect(page.keep.others.map(({ name }) => name)).toEqual(["All pages of this log"]);
  expect((await OpenPage.load(server, "nothing")).keep.others.map(({ name }) => name)).toEqual([
    "All pages of this log",
    "Titles",
  ]);
});

test("text of the log is text in the list", async () => {
  const { server } = await opened([
    { name: "log.yaml", text: 'format: 1\ntitle: "<script>alert(1)</script>"\nsands: {}\n' },
  ]);
  const { body } = await answered(server.address);
  expect(body).not.toContain("<script");
  expect(body).toContain("It is called &lt;script&gt;");
});

test("a notebook that throws is told on its page, and the others stand", async () => {
  const { server } = await opened();
  const { status, body } = await answered(`${server.address}pages/failing`);
  expect(status).toBe(500);
  expect(body).toContain("It failed: Error: no such thing");
  expect((await answered(`${server.address}pages/titles`)).status).toBe(200);
});

test("what is refused says nothing of what is there", async () => {
  const { server } = await opened();
  const { keep } = await OpenPage.load(server);
  const id = keep.save.split("/").at(-1)!;
  const cases: readonly (readonly [status: number, address: string, asking?: Asking])[] = [
    [404, origin(server)],
    [404, `${origin(server)}/favicon.ico`],
    [404, `${server.address}pages`],
    [404, `${server.address}pages/unknown`],
    [404, `${server.address}log.yaml`],
    [404, `${server.address}pages/titles/more`],
    [404, `${server.address}pages/constructor`],
    [404, `${server.address}save`, post(server, "{}")],
    [404, `${server.address}save/0123456789abcdef`, post(server, "{}")],
    [404, `${server.address}events/0123456789abcdef`],
    [404, `${server.address}?x`],
    [403, server.address, { headers: { Host: "evil.example" } }],
    [403, server.address, { headers: { Origin: "http://evil.example" } }],
    [403, server.address, { headers: { "Sec-Fetch-Site": "cross-site" } }],
    [403, keep.save, { method: "POST", headers: { "Content-Type": "application/json" }, body: "{}" }],
    [403, keep.save, post(server, "{}", { Origin: "null" })],
    [403, keep.save, post(server, "{}", { "Sec-Fetch-Site": "same-site" })],
    [403, keep.save, { method: "OPTIONS", headers: { Origin: "http://evil.example" } }],
    [405, keep.save, { headers: { Origin: origin(server) } }],
    [405, keep.save, { method: "OPTIONS", headers: { Origin: origin(server) } }],
    [405, keep.save, { method: "PUT", headers: { Origin: origin(server) }, body: "{}" }],
    [405, keep.events, post(server, "{}")],
    [405, server.address, post(server, "{}")],
    [415, keep.save, post(server, "{}", { "Content-Type": "text/plain" })],
    [415, keep.save, post(server, "{}", { "Content-Type": "application/x-www-form-urlencoded" })],
    [415, keep.save, post(server, "{}", { "Content-Type": "application/json; charset=utf-16" })],
  ];
  for (const [status, address, asking] of cases) {
    const said = await answered(address, asking);
    expect({ address, asking, status: said.status, body: said.body }).toEqual({
      address,
      asking,
      status,
      body: "",
    });
    expect(JSON.stringify(said.headers)).not.toMatch(new RegExp(`${id}|log\\.yaml|access-control`));
  }
});

test("bytes that are no request are answered by an error and nothing else", async () => {
  const { server } = await opened();
  const { port } = new URL(server.address);
  const host = `Host: 127.0.0.1:${port}\r\n`;
  expect(await raw(server, "\0\0\0\r\n\r\n")).toMatch(/^HTTP\/1\.1 400/);
  expect(await raw(server, `GET ${server.root} HTTP/1.1\r\nConnection: close\r\n\r\n`)).toMatch(/400/);
  const get = (path: string, more = "") =>
    raw(server, `GET ${path} HTTP/1.1\r\n${host}${more}Connection: close\r\n\r\n`);
  expect(await get(server.root, host)).toMatch(/40[03]/);
  expect(await get(`${server.root}pages/titles\0`)).toMatch(/40[04]/);
  expect(await get(`${server.root}..%2f..%2fetc%2fpasswd`)).toMatch(/404/);
  expect(await get(`http://127.0.0.1:${port}${server.root}`)).toMatch(/404/);
  expect(await get(server.root, `X: ${"x".repeat(40_000)}\r\n`)).toMatch(/431/);
  expect(await raw(server, `CONNECT evil.example:443 HTTP/1.1\r\n${host}\r\n`)).toBe("");
  const smuggled = `POST ${server.root} HTTP/1.1\r\n${host}Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`;
  expect(await raw(server, smuggled)).toMatch(/400/);
  // No page of ours opens a socket: the wish is passed over, and another site's is refused like any other.
  const socket =
    "Upgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: MTIzNDU2Nzg5MDEyMzQ1Ng==\r\n";
  const upgrade = (more: string) =>
    raw(server, `GET ${server.root} HTTP/1.1\r\n${host}Connection: Upgrade, close\r\n${socket}${more}\r\n`);
  expect(await upgrade("Origin: http://evil.example\r\n")).toMatch(/403/);
  expect(await upgrade(`Origin: http://127.0.0.1:${port}\r\n`)).not.toMatch(/101/);
  expect((await answered(server.address)).status).toBe(200);
});

test("a body that is too long, cut off, slow, or no JSON is refused, and nothing is saved", async () => {
  const { server, folder } = await opened(version(1), 60_000);
  const hasty = (await opened(version(1), 700)).server;
  const { keep } = await OpenPage.load(server);
  const slow = await OpenPage.load(hasty);
  const head = (to: string, length: string) => {
    const { host, origin, pathname } = new URL(to);
    return `POST ${pathname} HTTP/1.1\r\nHost: ${host}\r\nOrigin: ${origin}\r\nContent-Type: application/json\r\n${length}\r\n\r\n`;
  };
  expect(await raw(server, head(keep.save, "Content-Length: 99999999999"))).toMatch(/413/);
  const chunk = `${(1_000_000).toString(16)}\r\n${"x".repeat(1_000_000)}\r\n`;
  // Where the connection is closed while the rest is still being sent, the answer may be lost.
  expect(await raw(server, head(keep.save, "Transfer-Encoding: chunked") + chunk.repeat(40))).toMatch(
    /413|^$/,
  );
  const started = Date.now();
  expect(await raw(hasty, `${head(slow.keep.save, "Content-Length: 100")}{"base"`)).toMatch(/400|408/);
  expect(Date.now() - started).toBeLessThan(20_000);
  for (const body of ["", "{", "null", "[]", '{"base":[],"texts":[]}', '{"base":[{"name":1}],"texts":[]}']) {
    const { status, body: said } = await answered(keep.save, post(server, body));
    expect({ body, status, said: JSON.parse(said) }).toMatchObject({
      status: 400,
      said: { kind: "refused" },
    });
  }
  expect(textsIn(folder)).toEqual(version(1));
});

test("a page saves into the files; another page hears of it, and it itself does not", async () => {
  const { server, folder } = await opened();
  const [first, second] = [await OpenPage.load(server), await OpenPage.load(server)];
  expect(first.setup.texts).toEqual(version(1));
  const streams = [first.listen(), second.listen()];
  await pause(100);
  expect(await first.save(version(1), version(2))).toEqual({
    status: 200,
    answer: { kind: "saved", texts: version(2) },
  });
  expect(textsIn(folder)).toEqual(version(2));
  await until(() => streams[1]!.heard.length > 0);
  expect(streams[1]!.heard).toEqual([version(2)]);
  // The second page goes on from what it heard; the watch of the folder has long seen both saves.
  expect((await second.save(version(2), version(3))).status).toBe(200);
  await until(() => streams[0]!.heard.length > 0);
  await pause(600);
  expect([streams[0]!.heard, streams[1]!.heard]).toEqual([[version(3)], [version(2)]]);
  for (const stream of streams) stream.close();
});

test("a file that was changed elsewhere is not written over: both sides are there", async () => {
  const { server, folder } = await opened();
  const page = await OpenPage.load(server);
  writeFileSync(join(folder, "log.yaml"), version(9)[0]!.text);
  const theirs = [version(9)[0]!, version(1)[1]!];
  expect(await page.save(version(1), version(2))).toEqual({
    status: 409,
    answer: { kind: "changed", theirs },
  });
  expect(textsIn(folder)).toEqual(theirs);
  // Theirs is what the page goes on from.
  expect((await page.save(theirs, version(2))).status).toBe(200);
});

test("an editor's save reaches the pages, written in place or renamed into place, once", async () => {
  const { server, folder } = await opened();
  const page = await OpenPage.load(server);
  const { heard, close } = page.listen();
  await pause(100);
  const [log, rows] = version(2);
  writeFileSync(join(folder, "log.yaml"), log!.text);
  await until(() => heard.length === 1);
  expect(heard[0]).toEqual([log, version(1)[1]]);
  writeFileSync(join(folder, "bags.csv.new"), rows!.text);
  renameSync(join(folder, "bags.csv.new"), join(folder, "bags.csv"));
  await until(() => heard.length === 2);
  expect(heard[1]).toEqual(version(2));
  // Away for a moment, as some editors have it, and written in pieces.
  renameSync(join(folder, "log.yaml"), join(folder, "log.yaml~"));
  await pause(30);
  const { text } = version(3)[0]!;
  writeFileSync(join(folder, "log.yaml"), text.slice(0, 40));
  writeFileSync(join(folder, "log.yaml"), text);
  await until(() => heard.length === 3);
  expect(heard[2]![0]!.text).toBe(text);
  await pause(500);
  expect(heard.length).toBe(3);
  close();
});

test("a change behind a link is heard of as well, and a page that is loaded before it is noticed is told nothing older", async () => {
  const there = folderWith(version(1));
  const folder = folderWith([]);
  for (const name of ["log.yaml", "bags.csv"]) symlinkSync(join(there, name), join(folder, name));
  const { server } = await opened(folder);
  const page = await OpenPage.load(server);
  const { heard, close } = page.listen();
  await pause(100);
  writeFileSync(join(there, "log.yaml"), version(2)[0]!.text);
  const fresh = await OpenPage.load(server);
  expect(fresh.setup.texts[0]).toEqual(version(2)[0]);
  const toFresh = fresh.listen();
  await until(() => heard.length === 1);
  await pause(400);
  expect([heard.length, toFresh.heard.length]).toEqual([1, 0]);
  close();
  toFresh.close();
});

test("a page that was away hears on its return what it missed", async () => {
  const { server, folder } = await opened();
  const page = await OpenPage.load(server);
  writeFileSync(join(folder, "log.yaml"), version(2)[0]!.text);
  await pause(600);
  const late = page.listen();
  await until(() => late.heard.length === 1);
  late.close();
  const again = page.listen();
  await pause(300);
  expect(again.heard).toEqual([]);
  again.close();
});

test("more pages than a browser has connections for: the oldest streams give way", async () => {
  const { server, folder } = await opened();
  const pages = await Promise.all(Array.from({ length: 7 }, () => OpenPage.load(server)));
  const streams: { readonly heard: unknown[]; close(): void }[] = [];
  for (const page of pages) {
    streams.push(page.listen());
    await pause(30);
  }
  writeFileSync(join(folder, "log.yaml"), version(2)[0]!.text);
  await until(() => streams[6]!.heard.length === 1);
  expect(streams.map(({ heard }) => heard.length)).toEqual([0, 0, 0, 1, 1, 1, 1]);
  for (const stream of streams) stream.close();
});

test("a log that is spoilt or gone is told on the page, and read again once it is back", async () => {
  const { server, folder } = await opened();
  const page = await OpenPage.load(server);
  writeFileSync(join(folder, "log.yaml"), "just words\n");
  const spoilt = await answered(`${server.address}pages/titles`);
  expect(spoilt.body).toContain("cannot be read as a log");
  expect(spoilt.body).toContain("log.yaml:1:1");
  rmSync(join(folder, "log.yaml"));
  expect((await answered(server.address)).body).toContain("There is no file");
  expect(await page.save(version(1), version(2))).toMatchObject({
    status: 422,
    answer: { kind: "refused", message: expect.stringContaining("no longer there") },
  });
  mkdirSync(join(folder, "log.yaml"));
  expect((await answered(`${server.address}pages/titles`)).body).toContain("is a folder");
  rmSync(join(folder, "log.yaml"), { recursive: true });
  writeFileSync(join(folder, "log.yaml"), version(1)[0]!.text);
  expect((await page.save(version(1), version(2))).status).toBe(200);
  expect(readFileSync(join(folder, "log.yaml"), "utf8")).toBe(version(2)[0]!.text);
});

test("it closes at once where pages only listen", async () => {
  const { server, site } = await opened();
  const page = await OpenPage.load(server);
  const { close } = page.listen();
  await pause(100);
  const started = Date.now();
  site.close();
  await server.close();
  expect(Date.now() - started).toBeLessThan(1000);
  await expect(answered(server.address)).rejects.toThrow(/ECONNREFUSED/);
  close();
});
