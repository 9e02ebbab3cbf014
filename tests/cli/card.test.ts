// mullbook card, as a founder runs it.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { built, mullbook, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

test("card alone lists the cards, one line each", async () => {
  const { code, out, err } = await mullbook(["card"]);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const names = out
    .trimEnd()
    .split("\n")
    .map((line) => /^([a-z-]+) {3,}\S/.exec(line)?.[1]);
  expect(names).toEqual(
    expect.arrayContaining([
      "moisture",
      "green-compression",
      "permeability-falling-column",
      "squeeze",
      "sieving",
      "trial",
    ]),
  );
  expect(names).not.toContain(undefined);
});

test("a card is written where it is asked for, and the path is said", async () => {
  const to = temporaryFolder();
  const { code, out } = await mullbook(["card", "moisture", "--to", join(to, "new")]);
  expect({ code, out }).toEqual({ code: 0, out: `${join(to, "new", "card-moisture.html")}\n` });
  expect(readFileSync(out.trim(), "utf8")).toMatch(/^<!doctype html>[\s\S]*Caution[\s\S]*<\/html>/);
  const here = temporaryFolder();
  expect((await mullbook(["card", "Trial"], { cwd: here })).out).toBe("card-trial.html\n");
});

test("a name that is no card is answered with those that are meant", async () => {
  const cases: readonly (readonly [args: readonly string[], says: RegExp])[] = [
    [["card", "moistur"], /no card "moistur"[\s\S]*mullbook card moisture/],
    [["card", "permeability"], /permeability-constant-head, permeability-aspirator/],
    [["card", "recipe"], /weights of your own log[\s\S]*write recipe my-sands\.yaml/],
    [["card", "xylophone"], /See: mullbook card/],
    [["card", "moisture", "squeeze"], /wants a test after it; given: moisture, squeeze/],
    [["card", "moisture", "--as", "html"], /knows no --as/],
  ];
  for (const [args, says] of cases) {
    const { code, out, err } = await mullbook(args);
    expect({ args, code, out }).toEqual({ args, code: 2, out: "" });
    expect(err).toMatch(says);
  }
});

test("help says that a card's name may be left out", async () => {
  const { out } = await mullbook(["help", "card"]);
  expect(out).toContain("mullbook card [test] [--to DIR]");
  expect(out.split("\n").filter((line) => line.length > 110)).toEqual([]);
});
