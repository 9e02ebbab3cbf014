// A log opened by the program, as a founder opens it.

import { type ChildProcess, spawn } from "node:child_process";
import { asFounder, main } from "../cli/mullbook.ts";

/** rights: another user's. The address is that of the notebook's page; where none is said, what was complained of is thrown. */
export async function openedLog(
  folder: string,
  log: string,
  notebook: string,
  rights: { readonly uid?: number; readonly gid?: number } = {},
): Promise<{ readonly server: ChildProcess; readonly address: string }> {
  const server = spawn(process.execPath, [main, "open", log, notebook], {
    cwd: folder,
    env: asFounder(),
    ...rights,
  });
  const complaints: string[] = [];
  server.stderr.on("data", (part) => complaints.push(String(part)));
  const address = await new Promise<string>((resolve, reject) => {
    server.stdout.once("data", (part) => resolve(String(part).trim()));
    server.once("exit", () => reject(new Error(`no address was said: ${complaints.join("")}`)));
  });
  return { server, address };
}
