// From a call to its command. Each command is loaded when it is asked for: checking a log draws no chart.

import { readArguments } from "./arguments.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { isRefusal } from "./refusal.ts";

export async function commandLine(argv: readonly string[], console: Console): Promise<ExitCode> {
  const call = readArguments(argv);
  if (isRefusal(call)) return refuse(console, call);
  if (call.asks === "version") {
    console.result((await import("./package-folder.ts")).packageVersion());
    return 0;
  }
  if (call.asks === "help") {
    const { commandHelp, help } = await import("./help.ts");
    console.result(call.about ? commandHelp(call.about) : help());
    return 0;
  }
  const [first = "", second = ""] = call.words;
  switch (call.command.name) {
    case "begin":
      return (await import("./begin.ts")).begin(first, call, console);
    case "check":
      return (await import("./check.ts")).check(first, console);
    case "card":
      return (await import("./card.ts")).card(call.words.join(" "), call, console);
    case "list":
      return (await import("./list.ts")).list(console);
    case "write":
      return (await import("./write.ts")).write(first, second, call, console);
    case "open":
      return (await import("./open.ts")).open(first, second, console);
    case "reference":
      return (await import("./reference.ts")).reference(first, call, console);
    case "demo":
      return (await import("./demo.ts")).demo(call, console);
    default:
      throw new Error(`the command "${call.command.name}" has no code`);
  }
}
