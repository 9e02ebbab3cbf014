// Whatever is bundled is handed on with its licence: the packages are found here by another way than the build does it.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { bundler } from "../../lib/disk/bundler.ts";
import { built, root } from "../cli/mullbook.ts";

beforeAll(built, 180_000);

/** Folders of packages that files come from, with a package.json that names a version, nearest first. */
function packageOf(file: string): string | undefined {
  const parts = file.split("/");
  if (!parts.includes("node_modules")) return undefined;
  while (parts.pop() !== undefined) {
    const path = join(root, ...parts, "package.json");
    if (existsSync(path) && "version" in JSON.parse(readFileSync(path, "utf8"))) return parts.join("/");
  }
  return undefined;
}

let once: Promise<readonly string[]> | undefined;
function bundledPackages(): Promise<readonly string[]> {
  once ??= findBundled();
  return once;
}

async function findBundled(): Promise<readonly string[]> {
  const { build } = await bundler();
  const entries = [
    "lib/main.ts",
    "lib/index.ts",
    "lib/live/main.ts",
    "lib/live/boot.ts",
    "lib/live/whole.ts",
  ];
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [...entries, "notebooks/*.ts"],
    outdir: "out",
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "browser",
    external: ["node:*", "tsx", "tsx/*"],
    minify: true,
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  const files = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
  );
  return [...new Set(files.flatMap((file) => packageOf(file) ?? []))].sort();
}

test("each bundled package stands in the list of licences by name and version, with the text that it carries", async () => {
  const list = readFileSync(join(root, "dist", "THIRD-PARTY-LICENSES.txt"), "utf8");
  const packages = await bundledPackages();
  expect(packages.length).toBeGreaterThan(30);
  const missing = packages.filter((folder) => {
    const { name, version, license } = JSON.parse(
      readFileSync(join(root, folder, "package.json"), "utf8"),
    ) as {
      readonly [key: string]: string;
    };
    const at = list.split(/^-{72}$/m).find((part) => part.split("\n").includes(`${name} ${version}`));
    const texts = readdirSync(join(root, folder)).filter((file) =>
      /^(licen[cs]e|copying|notice)/i.test(file),
    );
    const said = (file: string) =>
      readFileSync(join(root, folder, file), "utf8")
        .replace(/\r\n/g, "\n")
        .trim();
    if (at === undefined) return true;
    return texts.length > 0 ? !texts.every((file) => at.includes(said(file))) : !at.includes(String(license));
  });
  expect(missing).toEqual([]);
});

test("all of them may be handed on in a package under the MIT licence", async () => {
  const licences = (await bundledPackages()).flatMap((folder) =>
    (JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8")).license as string).split(" AND "),
  );
  // Common practice: these ask for their text to go with them, and for nothing of what they are put into.
  const known = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BSL-1.0", "0BSD"];
  expect(licences.filter((licence) => !known.includes(licence))).toEqual([]);
});
