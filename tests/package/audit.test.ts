// What the registry knows against the packages that are handed on: npm run package.

import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { root } from "../cli/mullbook.ts";
import { whole } from "./packed.ts";

interface Report {
  readonly metadata?: { readonly vulnerabilities: { readonly total: number } };
  readonly vulnerabilities?: object;
  readonly message?: string;
}

/** Those that a user gets, and those that only work on this repository gets. */
for (const [what, more] of [
  ["what is installed with the package", ["--omit=dev"]],
  ["what it is made with", []],
] as const) {
  test(`nothing is known against ${what}`, ({ skip }) => {
    if (!whole) skip("asked for by npm run package alone");
    const { stdout } = spawnSync("npm", ["audit", "--json", ...more], { cwd: root, encoding: "utf8" });
    const { metadata, vulnerabilities, message } = JSON.parse(stdout) as Report;
    if (!metadata) skip(`the registry answers no audit: ${message}`);
    expect(vulnerabilities).toEqual({});
    expect(metadata?.vulnerabilities.total).toBe(0);
  });
}
