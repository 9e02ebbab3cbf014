// A stranger's empty project, in which the packed file is installed as npm installs it.

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { asFounder, root, temporaryFolder } from "../cli/mullbook.ts";
import { packed } from "./packed.ts";

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Stranger {
  readonly folder: string;
  /** What npm said while it installed. */
  readonly installed: string;
  /** The program by the name that the installation gave it; under another node where one is named. */
  mullbook(args: readonly string[], node?: string): Ran;
  node(args: readonly string[]): Ran;
}

export interface HowInstalled {
  /** Whether packages may run scripts of theirs. */
  readonly scripts: boolean;
}

/** Installs from what npm keeps on this machine; where it has not kept it, from the registry. */
export async function stranger({ scripts }: HowInstalled): Promise<Stranger> {
  const folder = temporaryFolder();
  const { path } = await packed();
  const dependencies = { mullbook: `file:${path}` };
  const put = (name: string, what: object) => writeFileSync(join(folder, name), JSON.stringify(what));
  put("package.json", { name: "stranger", private: true, type: "module", dependencies });
  put("package-lock.json", lockFor(path, dependencies));
  const options = ["--no-audit", "--no-fund", scripts ? "--foreground-scripts" : "--ignore-scripts"];
  const install = (...more: readonly string[]) => run("npm", ["ci", ...options, ...more], folder);
  let npm = install("--offline");
  if (npm.status !== 0 && npm.stderr.includes("ENOTCACHED")) npm = install();
  if (npm.status !== 0) throw new Error(`npm ci ended with ${npm.status}:\n${npm.stderr}`);
  return {
    folder,
    installed: npm.stdout + npm.stderr,
    mullbook: (args, node = process.execPath) =>
      run(join(folder, "node_modules", ".bin", "mullbook"), args, folder, node),
    node: (args) => run(process.execPath, args, folder),
  };
}

/** What the package asks for, at the versions that this repository is tested with. */
function lockFor(path: string, dependencies: object): object {
  const { packages } = read("package-lock.json") as { readonly packages: { readonly [at: string]: Entry } };
  const wanted = new Map<string, Entry>();
  const add = (name: string): void => {
    const at = `node_modules/${name}`;
    const found = packages[at];
    if (!found || wanted.has(at)) return;
    const { dev: _, ...entry } = found;
    wanted.set(at, entry);
    for (const more of Object.keys({ ...entry.dependencies, ...entry.optionalDependencies })) add(more);
  };
  const manifest = read("package.json") as Entry & { readonly bin: object; readonly engines: object };
  for (const name of Object.keys(manifest.dependencies ?? {})) add(name);
  const integrity = `sha512-${createHash("sha512").update(readFileSync(path)).digest("base64")}`;
  const { version, bin, engines } = manifest;
  const ours = {
    version,
    resolved: `file:${path}`,
    integrity,
    bin,
    engines,
    dependencies: manifest.dependencies,
  };
  return {
    name: "stranger",
    lockfileVersion: 3,
    requires: true,
    packages: {
      "": { name: "stranger", dependencies },
      "node_modules/mullbook": ours,
      ...Object.fromEntries(wanted),
    },
  };
}

interface Entry {
  readonly version: string;
  readonly dev?: boolean;
  readonly dependencies?: { readonly [name: string]: string };
  readonly optionalDependencies?: { readonly [name: string]: string };
}

const read = (file: string): unknown => JSON.parse(readFileSync(join(root, file), "utf8"));

/** The node that is named stands first on the path: a program that asks for "node" finds it. */
function run(program: string, args: readonly string[], cwd: string, node = process.execPath): Ran {
  const env = { ...asFounder(), PATH: `${dirname(node)}${delimiter}${process.env.PATH}` };
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    cwd,
    env,
    encoding: "utf8",
    timeout: 600_000,
  });
  if (error) throw error;
  return { status, stdout, stderr };
}
