// mullbook open as a process: what it prints, how it stops, and what it refuses.

import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { beforeAll, expect, onTestFinished, test } from "vitest";
import { EXAMPLE_NOTEBOOK } from "../../lib/disk/example-notebook.ts";
import type { LogText } from "../../lib/index.ts";
import type { LiveSetup } from "../../lib/page/live-setup.ts";
import { logWith, soundRows } from "../cli/logs.ts";
import { asFounder, built, main, mullbook, temporaryFolder } from "../cli/mullbook.ts";

beforeAll(built, 180_000);

const sound = logWith(...soundRows);

interface Running {
  readonly child: ChildProcess;
  readonly cwd: string;
  /** The first line, once it is there. */
  readonly address: Promise<string>;
  readonly ended: Promise<{ readonly code: number | null; readonly err: string }>;
}

function opened(words: readonly string[], files: Readonly<Record<string, string>>): Running {
  const cwd = temporaryFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(cwd, name), text);
  const child = spawn(process.execPath, [main, "open", ...words], { cwd, env: asFounder() });
  onTestFinished(() => {
    child.kill("SIGKILL");
  });
  let err = "";
  child.stderr.on("data", (part) => {
    err += part;
  });
  const address = new Promise<string>((resolve, reject) => {
    child.stdout.once("data", (part) => resolve(String(part).trim()));
    child.once("close", () => reject(new Error(err)));
  });
  address.catch(() => undefined);
  return {
    child,
    cwd,
    address,
    ended: new Promise((resolve) => child.on("close", (code) => resolve({ code, err }))),
  };
}

async function setupAt(address: string): Promise<LiveSetup & { readonly html: string }> {
  const html = await (await fetch(address)).text();
  return { ...JSON.parse(/id="live-setup">(.*?)<\/script>/s.exec(html)![1]!), html };
}

function keepOf({ keep }: LiveSetup) {
  if (keep.kind !== "server") throw new Error("not from a server");
  return keep;
}

/** Resolves once the stream is open. */
function listenTo(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const asked = request(address, { agent: false }, (response) => {
      response.on("error", () => undefined);
      response.resume();
      resolve();
    });
    asked.on("error", reject);
    asked.end();
  });
}

test("a live page is served and saved, and every signal stops it with exit code 0 while a page listens", async () => {
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
    const { child, cwd, address, ended } = opened(["log.yaml", "grain-fineness"], { "log.yaml": sound });
    const at = await address;
    expect(at).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/pages\/grain-fineness$/);
    const setup = await setupAt(at);
    const keep = keepOf(setup);
    expect(setup.texts).toEqual([{ name: "log.yaml", text: sound }]);
    expect(setup.html).toContain("connect-src 'self'");
    const { origin } = new URL(at);
    await listenTo(origin + keep.events);
    const texts: LogText[] = [{ name: "log.yaml", text: sound.replace("12.60", "12.70") }];
    const saved = await fetch(origin + keep.save, {
      method: "POST",
      headers: { Origin: origin, "Content-Type": "application/json" },
      body: JSON.stringify({ base: setup.texts, texts }),
    });
    expect({ status: saved.status, answer: await saved.json() }).toEqual({
      status: 200,
      answer: { kind: "saved", texts },
    });
    expect(readFileSync(join(cwd, "log.yaml"), "utf8")).toBe(texts[0]!.text);
    expect(readFileSync(join(cwd, "log.yaml.before"), "utf8")).toBe(sound);
    const asked = Date.now();
    child.kill(signal);
    const { code, err } = await ended;
    expect({ signal, code }).toEqual({ signal, code: 0 });
    expect(Date.now() - asked).toBeLessThan(4000);
    expect(err).toContain("log.yaml.before");
    expect(err).not.toMatch(/^ +at /m);
  }
}, 120_000);

test("a save that is on its way when the signal comes is finished first", async () => {
  const { child, cwd, address, ended } = opened(["log.yaml", "grain-fineness"], { "log.yaml": sound });
  const setup = await setupAt(await address);
  const { origin, port } = new URL(await address);
  const texts: LogText[] = [{ name: "log.yaml", text: `${sound}# more\n` }];
  const body = JSON.stringify({ base: setup.texts, texts });
  const answer = new Promise<number | undefined>((resolve, reject) => {
    const asked = request(origin + keepOf(setup).save, {
      method: "POST",
      agent: false,
      headers: {
        Host: `127.0.0.1:${port}`,
        Origin: origin,
        "Content-Type": "application/json",
        "Content-Length": Buffer.byteLength(body),
      },
    });
    asked.on("response", ({ statusCode }) => resolve(statusCode));
    asked.on("error", reject);
    asked.write(body.slice(0, 50));
    setTimeout(() => child.kill("SIGTERM"), 200);
    setTimeout(() => asked.end(body.slice(50)), 600);
  });
  expect(await answer).toBe(200);
  expect((await ended).code).toBe(0);
  expect(readFileSync(join(cwd, "log.yaml"), "utf8")).toBe(texts[0]!.text);
}, 60_000);

test("a notebook of the founder's own is live as well; one that needs the disk is shown to be read", async () => {
  const files = {
    "log.yaml": sound,
    "own.ts": EXAMPLE_NOTEBOOK,
    "disk.ts": `import { readFileSync } from "node:fs";\n${EXAMPLE_NOTEBOOK}\nvoid readFileSync;\n`,
  };
  const own = opened(["log.yaml", "own.ts"], files);
  const setup = await setupAt(await own.address);
  expect(setup.html).toContain("Dune sand: 1");
  expect(keepOf(setup).others[0]!.name).toBe("All pages of this log");
  const list = await (await fetch(new URL(keepOf(setup).others[0]!.href, await own.address))).text();
  expect(list).toContain("Dune sand: 1");
  own.child.kill("SIGTERM");
  expect((await own.ended).code).toBe(0);

  const disk = opened(["log.yaml", "disk.ts"], files);
  const html = await (await fetch(await disk.address)).text();
  expect(html).toContain("Dune sand: 1");
  expect(html).not.toContain("<script");
  disk.child.kill("SIGTERM");
  const { code, err } = await disk.ended;
  expect(code).toBe(0);
  expect(err).toMatch(/disk\.ts:1:\d+: "node:fs" is part of node[\s\S]*can be read here and not be changed/);
}, 120_000);

test("what cannot be opened is refused in words, and nothing is left running", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), sound);
  writeFileSync(join(cwd, "words.yaml"), "just words\n");
  writeFileSync(join(cwd, "none.ts"), "export default 3;\n");
  mkdirSync(join(cwd, "folder.yaml"));
  const cases: readonly (readonly [words: readonly string[], code: number, says: RegExp])[] = [
    [[], 2, /wants a log after it; none is given[\s\S]*mullbook open my-sands.yaml/],
    [["a.yaml", "b", "c"], 2, /given: a.yaml, b, c/],
    [["lost.yaml"], 2, /There is no file lost.yaml/],
    [["folder.yaml"], 2, /is a folder/],
    [["words.yaml"], 1, /words.yaml:1:1[\s\S]*Nothing is opened/],
    [["log.yaml", "grain-finenes"], 2, /Did you mean: grain-fineness/],
    [["grain-fineness", "log.yaml"], 2, /log comes first[\s\S]*mullbook open log.yaml grain-fineness/],
    [["log.yaml", "none.ts"], 2, /exports no notebook/],
    [["log.yaml", "--to", "x"], 2, /knows no --to/],
  ];
  for (const [words, code, says] of cases) {
    const run = await mullbook(["open", ...words], { cwd });
    expect({ words, code: run.code, out: run.out }).toEqual({ words, code, out: "" });
    expect(run.err).toMatch(says);
  }
}, 60_000);

test("help says how it is asked for", async () => {
  const { out } = await mullbook(["help", "open"]);
  expect(out).toContain("mullbook open <log> [notebook]");
  expect(out.split("\n").filter((line) => line.length > 110)).toEqual([]);
});
