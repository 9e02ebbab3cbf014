// The licences of the packages that a bundle holds parts of: they ask to be handed on with it.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
}

/**
 * One text with the licence of every package among the files that went into the bundle, each text once.
 * Throws where a package has neither a licence file nor names its licence: it must not be handed on then.
 */
export function thirdPartyLicences(root: string, inputs: Iterable<string>): string {
  const byText = new Map<string, string[]>();
  for (const folder of packageFolders(inputs)) {
    const manifest = JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8")) as Manifest;
    const text = licenceOf(join(root, folder), manifest);
    byText.set(text, [...(byText.get(text) ?? []), `${manifest.name} ${manifest.version}`]);
  }
  const rule = "-".repeat(72);
  const parts = [...byText].map(([text, names]) => `${rule}\n${names.join("\n")}\n\n${text}\n`);
  return `Parts of the following packages are bundled into the files beside this one.\n\n${parts.join("\n")}`;
}

/** "node_modules/@stdlib/x/lib/main.js" lies in "node_modules/@stdlib/x"; nested packages count for themselves. */
export function packageFolders(inputs: Iterable<string>): string[] {
  const folders = [...inputs].flatMap(
    (file) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(file.replaceAll("\\", "/"))?.[0] ?? [],
  );
  return [...new Set(folders)].sort();
}

function licenceOf(folder: string, { name, license, author }: Manifest): string {
  const files = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)(\.|-|$)/i.test(file))
    .sort();
  if (files.length > 0) {
    return files
      .map((file) => readFileSync(join(folder, file), "utf8").replace(/\r\n/g, "\n").trim())
      .join("\n\n");
  }
  if (license === undefined) throw new Error(`${name} does not say under which licence it is`);
  const who = typeof author === "string" ? author : (author?.name ?? "its authors");
  return `Licence: ${license} (the package holds no licence text). By ${who}.`;
}
