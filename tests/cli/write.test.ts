// Pages on the disk: four formats, names, and what is never written over.

import { linkSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { logWith, soundRows } from "./logs.ts";
import { built, mullbook, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

const notebook = "grain-fineness";

function folderWithLog(): string {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "My sands.yaml"), logWith(...soundRows));
  return cwd;
}

test("HTML unless said otherwise, here unless said otherwise; the same log gives the same bytes, whatever stood there", async () => {
  const cwd = folderWithLog();
  const name = "My sands-grain-fineness.html";
  const written = async () => {
    expect(await mullbook(["write", notebook, "My sands.yaml"], { cwd })).toMatchObject({
      code: 0,
      out: `${name}\n`,
    });
    // No temporary file stays.
    expect(readdirSync(cwd).sort()).toEqual([name, "My sands.yaml"]);
    return readFileSync(join(cwd, name), "utf8");
  };
  const page = await written();
  expect(page).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
  expect(page).toContain("<svg");
  writeFileSync(join(cwd, name), "x".repeat(1e6));
  expect(await written()).toBe(page);
});

test("logs in any script, and logs that differ in a sign, a capital or an ending, have a page each", async () => {
  const cwd = temporaryFolder();
  const names = ["песок", "глина", "砂", "sand 1", "sand-1", "Sand_1", "a.b", "a-b"].map(
    (name) => `${name}.yaml`,
  );
  names.push("sand-1.yml", "other.yml");
  for (const name of names) writeFileSync(join(cwd, name), logWith(...soundRows));
  for (const name of names) {
    const page = (name === "sand-1.yml" ? name : name.replace(/\.ya?ml$/, "")).concat("-grain-fineness.json");
    const { out } = await mullbook(["write", notebook, name, "--as", "json"], { cwd });
    expect(out).toBe(`${page}\n`);
  }
  expect(readdirSync(cwd).length).toBe(2 * names.length);
});

test("JSON: one file, whose figures a script can take", async () => {
  const cwd = folderWithLog();
  expect(
    (await mullbook(["write", notebook, "My sands.yaml", "--as", "json", "--to", "a/b"], { cwd })).out,
  ).toBe("a/b/My sands-grain-fineness.json\n");
  const page = JSON.parse(readFileSync(join(cwd, "a/b/My sands-grain-fineness.json"), "utf8"));
  expect(page.format).toBe("mullbook-page/1");
  expect(page.tables.length).toBeGreaterThan(0);
});

test("Markdown: a folder whose drawings are where the text says", async () => {
  const cwd = folderWithLog();
  const { code, out } = await mullbook(["write", notebook, "My sands.yaml", "--as", "markdown"], { cwd });
  expect(code).toBe(0);
  const paths = out.trimEnd().split("\n");
  expect(paths[0]).toBe("My sands-grain-fineness/My sands-grain-fineness.md");
  const text = readFileSync(join(cwd, paths[0]!), "utf8");
  const drawings = [...text.matchAll(/\]\(([^)]+\.svg)\)/g)].map(
    ([, name]) => `My sands-grain-fineness/${name}`,
  );
  expect(drawings.length).toBeGreaterThan(0);
  expect(paths.slice(1).sort()).toEqual(drawings.sort());
  for (const drawing of drawings)
    expect(readFileSync(join(cwd, drawing), "utf8")).toMatch(/^<svg[\s\S]*<\/svg>\n$/);
});

test("CSV: the shares are those of the masses", async () => {
  const cwd = folderWithLog();
  const { code, out } = await mullbook(["write", notebook, "My sands.yaml", "--as", "csv"], { cwd });
  expect(code).toBe(0);
  expect(out.split("\n")).toContain("My sands-grain-fineness/shares.csv");
  const shares = readFileSync(join(cwd, "My sands-grain-fineness/shares.csv"), "utf8");
  // 100 · 3.20 / 49.95 and 100 · 12.60 / 49.95, to six digits.
  expect(shares).toMatch(/^No\. 40,0\.425,6\.40641,/m);
  expect(shares).toMatch(/^No\. 50,0\.3,25\.2252,/m);
});

test("a log is never written over, by whatever name or link", async () => {
  const cwd = temporaryFolder();
  const log = logWith(...soundRows);
  mkdirSync(join(cwd, "to"));
  writeFileSync(join(cwd, "a.yaml"), log);
  // The page of a.yaml would be a-grain-fineness.json.
  linkSync(join(cwd, "a.yaml"), join(cwd, "a-grain-fineness.json"));
  symlinkSync(join(cwd, "a.yaml"), join(cwd, "to", "a-grain-fineness.json"));
  for (const to of [".", "to"]) {
    const { code, out, err } = await mullbook(["write", notebook, "a.yaml", "--as", "json", "--to", to], {
      cwd,
    });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/your log[\s\S]*--to DIR/);
  }
  expect(readFileSync(join(cwd, "a.yaml"), "utf8")).toBe(log);
});

test("where no page can be written it is said why", async () => {
  const cwd = folderWithLog();
  writeFileSync(join(cwd, "taken"), "");
  mkdirSync(join(cwd, "My sands-grain-fineness.json"));
  for (const [to, says] of [
    ["taken", /a part of the path is a file/],
    [".", /is a folder/],
  ] as const) {
    const { code, out, err } = await mullbook(
      ["write", notebook, "My sands.yaml", "--as", "json", "--to", to],
      {
        cwd,
      },
    );
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(says);
  }
  expect(readdirSync(cwd).filter((name) => name.endsWith(".tmp"))).toEqual([]);
});

test("a sieve that only says mesh gets through to a figure by the remedy of check", async () => {
  const cwd = temporaryFolder();
  const rows = (...finest: string[]) => logWith(...soundRows.slice(0, 4), ...finest, "pan: 0.15");
  writeFileSync(join(cwd, "log.yaml"), rows("200 mesh: 1.90"));
  const { code, out } = await mullbook(["check", "log.yaml"], { cwd });
  expect(code).toBe(1);
  const [, wire] = /write "(200 mesh, [^"]*)"/.exec(out)!;
  const [, opening] = /what it may be off by: "([^"]*)"/.exec(out)!;
  const width = async (log: string) => {
    writeFileSync(join(cwd, "log.yaml"), log);
    const written = await mullbook(["write", notebook, "log.yaml", "--as", "json"], { cwd });
    expect(written).toMatchObject({ code: 0 });
    const page = JSON.parse(readFileSync(join(cwd, written.out.trim()), "utf8"));
    const { value, low, high } = page.figures["Dune sand"].grainFinenessNumber;
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    return high - low;
  };
  // Of one opening, on which two fifths of the sand lie: the less is known of it, the wider the interval.
  const on = (label: string) =>
    width(logWith(...soundRows.slice(0, 2), "No. 70: 15.10", `${label}: 18.90`, "pan: 0.15"));
  expect([wire, opening]).toEqual(["200 mesh, 0.05 mm wire", "0.081 ± 0.011 mm"]);
  expect(await on(wire!)).toBeGreaterThan(await on("0.077 ± 0.001 mm"));
  expect(await on(opening!)).toBeGreaterThan(await on("0.081 ± 0.001 mm"));
  // A trace, as check tells to write it.
  expect(await width(rows("No. 140: 1.90", "No. 200: 0.005 ± 0.005 g"))).toBeGreaterThan(0);
});
