// A new log, and what check says of a log.

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { logWith, soundRows } from "./logs.ts";
import { built, mullbook, mullbookProcess, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

test("a begun log is there, is checked without an error, and is never written over", async () => {
  const cwd = temporaryFolder();
  const begun = await mullbook(["begin", "my-sands.yaml"], { cwd });
  expect(begun).toMatchObject({ code: 0, out: "my-sands.yaml\n" });
  expect(begun.err).toContain("mullbook check my-sands.yaml");
  // Both ways on: a text editor, or the browser.
  expect(begun.err).toContain("text editor");
  expect(begun.err).toContain("mullbook open my-sands.yaml grain-fineness");
  expect(await mullbook(["check", "my-sands.yaml"], { cwd })).toMatchObject({
    code: 0,
    out: expect.stringMatching(
      /^my-sands\.yaml: nothing wrong; 1 sand, 2 sievings; fingerprint [\da-f]{8}\.\n$/,
    ),
    err: "",
  });

  writeFileSync(join(cwd, "my-sands.yaml"), "mine");
  const again = await mullbook(["begin", "my-sands.yaml"], { cwd });
  expect(again).toMatchObject({ code: 2, out: "" });
  expect(again.err).toMatch(/there already[\s\S]*another name/);
  expect(readFileSync(join(cwd, "my-sands.yaml"), "utf8")).toBe("mine");
});

test("begin --for gives the log that is asked for, and says its two next commands, which run", async () => {
  const cwd = temporaryFolder();
  const { code, out, err } = await mullbook(["begin", "my trial", "--for", "moisture-trial"], { cwd });
  expect({ code, out }).toEqual({ code: 0, out: "my trial.yaml\n" });
  expect(err).toContain('mullbook open "my trial.yaml" moisture-trial');
  const said = [...err.matchAll(/^ {4}mullbook (\w+) (.*)"my trial\.yaml"$/gm)].map(([, name, rest]) => [
    name!,
    ...(rest === "" ? [] : [rest!.trim()]),
  ]);
  expect(said).toEqual([["check"], ["write", "moisture-trial"]]);
  for (const words of said) expect((await mullbook([...words, "my trial.yaml"], { cwd })).code).toBe(0);
  const faulty: readonly (readonly [what: string, says: RegExp])[] = [
    ["moisture-trail", /no log to begin with for "moisture-trail"[\s\S]*--for moisture-trial/],
    ["xylophone", /There are: sieving, moisture-trial/],
  ];
  for (const [what, says] of faulty) {
    const refused = await mullbook(["begin", "other.yaml", "--for", what], { cwd });
    expect(refused).toMatchObject({ code: 2, out: "" });
    expect(refused.err).toMatch(says);
  }
  expect(existsSync(join(cwd, "other.yaml"))).toBe(false);
});

test("the commands that begin names run for a name with a hyphen, quotes or letters of any script", async () => {
  const cwd = temporaryFolder();
  const names: readonly (readonly [name: string, word: string])[] = [
    ["-dash.yaml", "./-dash.yaml"],
    ['a "b".yaml', '"a \\"b\\".yaml"'],
    ["песок.yaml", '"песок.yaml"'],
  ];
  for (const [name, word] of names) {
    const { out, err } = await mullbook(["begin", "--", name], { cwd });
    expect(out).toBe(`${name}\n`);
    expect(err).toContain(`mullbook check ${word}\n`);
  }
  expect((await mullbook(["check", "./-dash.yaml"], { cwd })).code).toBe(0);
});

test("a log that is not there: the one beside it that may be meant", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "Dune.yaml"), logWith(...soundRows));
  for (const name of ["dune.yaml", "Dune", "Dune.yml", "Dunne.yaml", "./dune.yaml"]) {
    const { code, err } = await mullbook(["check", name], { cwd });
    expect(code).toBe(2);
    expect(err).toMatch(/There is no file [\s\S]*Did you mean Dune\.yaml\?/);
  }
  expect((await mullbook(["check", "yard.yaml"], { cwd })).err).toContain("Put the name or the folder right");
});

test("begin adds .yaml, makes the folder, and takes no other kind of name", async () => {
  const cwd = temporaryFolder();
  expect((await mullbook(["begin", "yard/sands"], { cwd })).out).toBe("yard/sands.yaml\n");
  expect((await mullbook(["begin", "sands.csv"], { cwd })).code).toBe(2);
});

test("an issue names file, line and column as seen from here, and a remedy on the next line", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), logWith(...soundRows.with(1, "No. 50: 12,60")));
  const { code, out } = await mullbook(["check", "log.yaml"], { cwd });
  expect(code).toBe(1);
  // The fourteenth line is the first of the rows.
  expect(out).toMatch(/^log\.yaml:15:\d+: error: .*\n {4}\S/m);
  expect(out).toMatch(/log\.yaml: 1 error[^\n]*\.\n$/);
  const from = await mullbook(["check", join(cwd, "log.yaml")], { cwd: "/" });
  expect(from.out).toContain(`${join(cwd, "log.yaml")}:15:`);
});

test("CSV files are read from beside the log, and only from there", async () => {
  const cwd = temporaryFolder();
  const log = (name: string) =>
    `format: 1\nscales: { s: { reads to: 0.1 g } }\nsands:\n  Dune sand:\n    state: new\n    sievings file: ${name}\n`;
  const csv = "date,portion,scale,start,No. 40,No. 50,No. 70,pan\n2026-03-02,A,s,50,10,20,19,1\n";
  writeFileSync(join(cwd, "rows.csv"), csv);
  writeFileSync(join(cwd, "good.yaml"), log("rows.csv"));
  expect((await mullbook(["check", "good.yaml"], { cwd })).out).toContain("1 sand, 1 sieving");

  writeFileSync(join(cwd, "rows.csv"), csv.replace("20,19", "2O,19"));
  const faulty = await mullbook(["check", join(cwd, "good.yaml")]);
  expect(faulty.code).toBe(1);
  expect(faulty.out).toMatch(new RegExp(`^${cwd}/rows\\.csv:2:\\d+: error:`, "m"));

  for (const name of ["../rows.csv", join(cwd, "rows.csv"), "absent.csv"]) {
    writeFileSync(join(cwd, "bad.yaml"), log(name));
    const { code, out } = await mullbook(["check", "bad.yaml"], { cwd });
    expect(code).toBe(1);
    expect(out).toMatch(/^bad\.yaml:6:\d+: error: .*beside the log/m);
  }
});

test("a text that would move the cursor is shown as codes", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), logWith(...soundRows.with(0, '"\u001b[2J\u202eNo. 40": 3.20')));
  const { out } = await mullbook(["check", "log.yaml"], { cwd });
  expect(out).toMatch(/error/);
  expect(out).not.toMatch(/[\u001b\u202e]/);
});

test("notes alone leave nothing wrong, and are told all the same", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), logWith(...soundRows));
  const { code, out } = await mullbook(["check", "log.yaml"], { cwd });
  expect(code).toBe(0);
  expect(out.trimEnd().split("\n").at(-1)).toMatch(
    /^log\.yaml: nothing wrong, 2 notes; 1 sand, 1 sieving; fingerprint [\da-f]{8}\.$/,
  );
  expect(out).toMatch(/^log\.yaml:1:1: note: .*usual ranges/m);
});

/** 90 g on one sieve of 100 mm: more than 7 kg/m² (ASTM C136), which is 7 · π/4 · 0.1² = 0.055 kg. */
const crowded = `format: 1
invented: yes
metal: aluminium
bond: bentonite
scales: { small scale: { reads to: 0.1 g } }
sieve sets: { small stack: { frame: 100 mm } }
sands:
  Dune sand:
    state: new
    sievings:
      - date: 2026-03-02
        scale: small scale
        sieve set: small stack
        start: 120.0 g
        retained: { No. 40: 5.0, No. 50: 20.0, No. 70: 90.0, No. 100: 4.0, pan: 1.0 }
`;

test("what a page complains of, check tells as well: both count alike", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), crowded);
  const checked = await mullbook(["check", "log.yaml"], { cwd });
  // The row with 90 g stands on line 15.
  const [crowding] = /^log\.yaml:15:\d+: error: No\. 70: 90 g .* 55 g.*\n.*\n/m.exec(checked.out)!;
  const count = /log\.yaml: (.*); fingerprint [\da-f]{8}\.\n$/.exec(checked.out)![1]!;
  expect({ code: checked.code, count }).toEqual({ code: 1, count: "1 error, 1 warning" });
  const written = await mullbook(["write", "grain-fineness", "log.yaml", "--as", "json"], { cwd });
  expect(written.code).toBe(1);
  expect(written.err).toBe(`${crowding}log.yaml: ${count}; all of them with: mullbook check log.yaml\n`);
  const page = JSON.parse(readFileSync(join(cwd, written.out.trim()), "utf8"));
  const told = (page.issues as { message: string }[]).map(({ message }) => message);
  for (const message of told) expect(checked.out).toContain(message);
  expect(told.length).toBe(checked.out.match(/^log\.yaml:\d+:\d+: /gm)!.length);
});

test("what only a founder's own page complains of is told by write in full", () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), logWith(...soundRows));
  writeFileSync(
    join(cwd, "own.mjs"),
    `import { notebook } from "mullbook";
const issue = { code: "own/damp", severity: "warning", message: "The sand was damp.", remedy: "Dry it." };
export default notebook("Own", () => ({ question: "Dry?", answer: [], sections: [], issues: [issue] }));
`,
  );
  const { code, err } = mullbookProcess(["write", "own.mjs", "log.yaml"], { cwd });
  expect(code).toBe(0);
  expect(err).toMatch(/^warning: The sand was damp\.\n {4}Dry it\.\nlog\.yaml: 2 notes; all of them with/);
});
