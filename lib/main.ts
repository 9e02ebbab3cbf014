#!/usr/bin/env node
// The command line: runs the call, keeps the founder from stacks, and leaves the exit code.

import { calledAs } from "./disk/called.ts";
import { commandLine } from "./disk/command-line.ts";
import { keepCompiled } from "./disk/compile-cache.ts";
import { consoleOn } from "./disk/console.ts";
import { guardProcess, reportFault, startFolder } from "./disk/process.ts";

guardProcess();
keepCompiled();
startFolder();
const call = calledAs({ file: process.argv[1] ?? "", cwd: process.cwd(), env: process.env });
commandLine(process.argv.slice(2), consoleOn(process.stdout, process.stderr, call)).then((code) => {
  process.exitCode = code;
}, reportFault);
