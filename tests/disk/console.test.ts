// Where each kind of text goes.

import { expect, test } from "vitest";
import { consoleOn } from "../../lib/disk/console.ts";

function streams(isTTY: boolean) {
  const texts = { out: "", err: "" };
  const stream = (name: "out" | "err") => ({
    isTTY,
    write: (text: string) => {
      texts[name] += text;
    },
  });
  return { texts, console: consoleOn(stream("out"), stream("err")) };
}

test("results to stdout, messages to stderr, progress nowhere without a terminal", () => {
  const { texts, console } = streams(false);
  console.progress("Working ...");
  console.result("a.html");
  console.say("done");
  expect(texts).toEqual({ out: "a.html\n", err: "done\n" });
});

test("on a terminal progress is wiped before a line is written", () => {
  const { texts, console } = streams(true);
  console.progress("Working ...");
  console.result("a.html");
  expect(texts.out).toBe("a.html\n");
  expect(texts.err).toBe(`\rWorking ...\r${" ".repeat(11)}\r`);
});
