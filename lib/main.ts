#!/usr/bin/env node
// The command line: runs the call, keeps the founder from stacks, and leaves the exit code.

import { commandLine } from "./disk/command-line.ts";
import { consoleOn } from "./disk/console.ts";
import { guardProcess, reportFault, startFolder } from "./disk/process.ts";

guardProcess();
startFolder();
commandLine(process.argv.slice(2), consoleOn(process.stdout, process.stderr)).then((code) => {
  process.exitCode = code;
}, reportFault);
