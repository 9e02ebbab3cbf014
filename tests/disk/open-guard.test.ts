// Who is let in: our own pages, by the very address, and nobody else.

import fc from "fast-check";
import { expect, test } from "vitest";
import { readSaveRequest, requestFault } from "../../lib/disk/save-request.ts";
import { type Asked, newSecret, pathBehindDoor } from "../../lib/disk/serve-guard.ts";

const secret = newSecret();
const door = { port: 41233, secret };
const good: Asked = {
  url: `/${secret}/pages/moisture-trial`,
  method: "GET",
  hosts: ["127.0.0.1:41233"],
  origins: [],
  site: undefined,
};
const ask = (change: Partial<Asked>) => pathBehindDoor({ ...good, ...change }, door);

test("a secret has 192 bits and is another one each time", () => {
  expect(Buffer.from(secret, "base64url").length).toBe(24);
  expect(new Set(Array.from({ length: 100 }, newSecret)).size).toBe(100);
});

test("our own pages are let in", () => {
  expect(ask({})).toBe("pages/moisture-trial");
  expect(ask({ url: `/${secret}/` })).toBe("");
  expect(ask({ site: "none" })).toBe("pages/moisture-trial");
  expect(ask({ site: "same-origin", origins: ["http://127.0.0.1:41233"] })).toBe("pages/moisture-trial");
  const local = { hosts: ["localhost:41233"], origins: ["http://localhost:41233"] };
  expect(ask({ ...local, method: "POST", url: `/${secret}/save/0f` })).toBe("save/0f");
});

test("another name that leads to this machine is refused before all else", () => {
  for (const host of [
    "evil.example",
    "evil.example:41233",
    "127.0.0.1",
    "127.0.0.1:41234",
    "127.0.0.1:41233.evil.example",
    "127.0.0.1:041233",
    "LOCALHOST:41233",
    "localhost.:41233",
    "[::1]:41233",
    "0.0.0.0:41233",
    "127.1:41233",
    "",
  ])
    expect([host, ask({ hosts: [host] }), ask({ hosts: [host], url: "/" })]).toEqual([host, 403, 403]);
  expect(ask({ hosts: [] })).toBe(403);
  expect(ask({ hosts: ["127.0.0.1:41233", "127.0.0.1:41233"] })).toBe(403);
});

test("another site is refused, also one on this machine", () => {
  for (const site of ["cross-site", "same-site", "other", "twice", ""])
    expect([site, ask({ site })]).toEqual([site, 403]);
  for (const origin of [
    "null",
    "http://evil.example",
    "http://127.0.0.1:41234",
    "https://127.0.0.1:41233",
    "http://localhost:41233",
    "http://127.0.0.1:41233/",
    "",
  ]) {
    expect([origin, ask({ origins: [origin] })]).toEqual([origin, 403]);
    expect([origin, ask({ origins: [origin], method: "POST" })]).toEqual([origin, 403]);
  }
  const own = "http://127.0.0.1:41233";
  expect(ask({ origins: [own, own] })).toBe(403);
  // A change must say where it comes from.
  for (const method of ["POST", "PUT", "DELETE", "OPTIONS", "HEAD"]) expect(ask({ method })).toBe(403);
});

test("a path is one of ours as it stands, or none", () => {
  const near = secret.slice(0, -1) + (secret.endsWith("A") ? "B" : "A");
  for (const url of [
    "",
    "/",
    "*",
    `/${secret}`,
    `/${near}/`,
    `/${secret.slice(1)}/`,
    `//${secret}/`,
    `/${secret}//`,
    `/${secret}/.`,
    `/${secret}/..`,
    `/${secret}/../${secret}/`,
    `/${secret}/pages/../save`,
    `/${secret}/pages%2Fmoisture-trial`,
    `/${secret}/%2e%2e/`,
    `/${secret}/pages/moisture-trial/`,
    `/${secret}/pages\\moisture-trial`,
    `/${secret}/pages/moisture-trial\0`,
    `/${secret}/pages/moisture-trial%00`,
    `/${secret}/?x`,
    `/${secret}/#x`,
    `/${secret}/Pages/`,
    `/${secret}/pages/ø`,
    `/${secret}/;x`,
    `/${secret}/\n`,
    `http://127.0.0.1:41233/${secret}/`,
  ])
    expect([url, ask({ url })]).toEqual([url, 404]);
});

test("whatever is asked, only a plain path behind the right secret is answered", () => {
  const mixed = fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom(...good.hosts, "localhost:41233"));
  const asked = fc.record({
    url: fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string().map((rest) => `/${secret}/${rest}`),
      fc.string().map((rest) => `/${rest}/pages`),
    ),
    method: fc.constantFrom("GET", "POST", "HEAD", "TRACE", ""),
    hosts: fc.array(mixed, { maxLength: 2 }),
    origins: fc.array(fc.oneof(mixed, fc.constant("http://127.0.0.1:41233")), { maxLength: 2 }),
    site: fc.option(fc.oneof(fc.string(), fc.constantFrom("same-origin", "none")), { nil: undefined }),
  });
  fc.assert(
    fc.property(asked, (one) => {
      const path = pathBehindDoor(one, door);
      if (typeof path === "number") return;
      expect(path).toMatch(/^([a-z0-9-]+(\/[a-z0-9-]+)*)?$/);
      expect(one.url).toBe(`/${secret}/${path}`);
      expect(one.hosts.length).toBe(1);
    }),
    { numRuns: 3000, seed: 20260714 },
  );
});

test("whatever a page sends to be saved is two lists of texts, or refused in words", () => {
  const text = fc.record({
    name: fc.oneof(fc.constant("log.yaml"), fc.string()),
    text: fc.string({ unit: "binary" }),
  });
  const sent = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.json(),
    fc.record({ base: fc.array(text), texts: fc.array(text) }).map((value) => JSON.stringify(value)),
    fc.anything().map((value) => {
      try {
        return JSON.stringify({ base: value, texts: value }) ?? "";
      } catch {
        return "";
      }
    }),
  );
  fc.assert(
    fc.property(sent, (json) => {
      const read = readSaveRequest(json);
      if ("kind" in read) {
        expect(read.message).toMatch(/^Nothing is saved: .+\.$/);
        return;
      }
      for (const { name, text } of [...read.base, ...read.texts])
        expect([typeof name, typeof text]).toEqual(["string", "string"]);
      const fault = requestFault("log.yaml", read);
      if (fault) expect(fault.remedy).toMatch(/\.$/);
      else
        expect(read.texts.every(({ name }, i) => name === "log.yaml" || (i > 0 && !/[/\\]/.test(name)))).toBe(
          true,
        );
    }),
    { numRuns: 2000, seed: 20260714 },
  );
});
