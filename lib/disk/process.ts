// What the process does beside its command: pipes that close, faults of our own, and where it starts.

/** A reader that has seen enough ("| head") ends the run in silence; what goes wrong unseen is reported. */
export function guardProcess(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") process.exit();
      if (error.code === "ENOSPC" || error.code === "EDQUOT") {
        if (stream !== process.stderr)
          process.stderr.write(`mullbook: Not all that was to be printed is: the disk is full.
    Make room, or print to another disk.\n`);
        process.exit(2);
      }
      throw error;
    });
  }
  process.on("uncaughtException", reportFault);
}

/** One line that asks for a report; the stack only for those who ask for it. */
export function reportFault(error: unknown): void {
  const what = error instanceof Error ? `${error.name}: ${error.message.split("\n")[0]}` : String(error);
  process.stderr.write(
    `mullbook: this should not have happened (${what}). Please report it, with the call that you made and, if you can, the log.\n`,
  );
  if (process.env.MULLBOOK_DEBUG) {
    process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
  }
  process.exitCode = 2;
}

/** "npm run mullbook" starts in the package's folder; names in the call are meant from the founder's. */
export function startFolder(): void {
  const { npm_lifecycle_event, npm_package_name, INIT_CWD } = process.env;
  if (npm_lifecycle_event === "mullbook" && npm_package_name === "mullbook" && INIT_CWD)
    process.chdir(INIT_CWD);
}
