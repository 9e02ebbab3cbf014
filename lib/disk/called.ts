// How this program was called, so that every command that it prints can be run as it stands.

import { basename, delimiter, dirname, isAbsolute, relative, resolve } from "node:path";
import { COMMANDS } from "./commands.ts";

export interface Run {
  /** Path of the file that node runs, as the caller named it: process.argv[1]. */
  readonly file: string;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * The words before a command: "npm run mullbook --" where npm runs it, with the way to the package from elsewhere;
 * "npx --no mullbook" (which never fetches one) under npx; "mullbook" where the shell finds it by that name; otherwise
 * node and the way to the file.
 */
export function calledAs({ file, cwd, env }: Run): string {
  const { npm_package_name, npm_package_json, npm_lifecycle_event, npm_command, PATH = "" } = env;
  if (npm_package_name === "mullbook" && /^(mullbook|start)$/.test(npm_lifecycle_event ?? "")) {
    const folder = npm_package_json === undefined ? cwd : dirname(npm_package_json);
    const outside = relative(folder, cwd);
    const from = /^\.\.|^[A-Za-z]:/.test(outside) ? `--prefix ${shellWord(shortest(folder, cwd))} ` : "";
    return `npm ${from}run mullbook --`;
  }
  if (/^mullbook(\.\w+)?$/.test(basename(file))) {
    const found = PATH.split(delimiter).some((folder) => folder !== "" && resolve(folder) === dirname(file));
    if (npm_command === "exec") return "npx --no mullbook";
    return found ? "mullbook" : shellWord(shortest(file, cwd));
  }
  return `node ${shellWord(shortest(file, cwd))}`;
}

/** "mullbook check" and the like, wherever they stand in a text, as they can be run. */
export function asCalled(text: string, call: string): string {
  return call === "mullbook" ? text : text.replace(COMMAND, (_, name: string) => `${call} ${name}`);
}

const COMMAND = new RegExp(
  String.raw`(?<![\w./\\-])mullbook (${COMMANDS.map(({ name }) => name).join("|")})\b`,
  "g",
);

/** A path as one word of a shell, and never an option. */
export function shellWord(name: string): string {
  const path = name.startsWith("-") ? `./${name}` : name;
  return /^[\w./:\\@+=,%-]+$/.test(path) ? path : `"${path.replace(/["$`]/g, "\\$&")}"`;
}

function shortest(path: string, cwd: string): string {
  const near = relative(cwd, path);
  if (near === "" || isAbsolute(near) || near.length >= path.length) return path;
  return /[/\\]/.test(near) ? near : `./${near}`;
}
