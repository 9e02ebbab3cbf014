// Help that teaches by example.

import { COMMANDS, type Command } from "./commands.ts";

const OPTIONS: { readonly [option in Command["options"][number]]: string } = {
  to: "[--to DIR]",
  as: "[--as html|markdown|csv|json|vega-lite]",
  for: "[--for WHAT]",
  live: "[--live]",
};

export function usage({ name, words, also, options, bare }: Command): string {
  const asked = words.map((word) => (bare || name === "help" ? `[${word}]` : `<${word}>`));
  if (also !== undefined) asked.push(`[${also}]`);
  const may = options.map((option) => OPTIONS[option]);
  return ["mullbook", name, ...asked, ...may].join(" ");
}

export function help(): string {
  const commands = COMMANDS.map((command) => [command.name, command.does] as const);
  return `Mullbook reads what you wrote down beside the muller and writes pages: the question, the figures with
their ±, charts, findings, and what to do next.

A log of your own, from the first line to a page:

${columns(["begin", "check", "list", "write", "open"].flatMap((name) => named(name).examples.slice(0, 1)))}

To see first what comes out, from invented logs:

${columns(named("demo").examples)}

The commands (more on each: mullbook help <command>):

${columns(commands)}

Results go to stdout, messages to stderr. Exit codes: 0 good; 1 the data have errors (a page is written all
the same); 2 the call is wrong, or a file or a script of yours cannot be used, and no page is written.`;
}

export function commandHelp(command: Command): string {
  const more = command.more === undefined ? "" : `\n\n${command.more}`;
  return `${usage(command)}\n    ${command.does}\n\n${columns(command.examples)}${more}`;
}

function named(name: string): Command {
  return COMMANDS.find((command) => command.name === name)!;
}

function columns(rows: readonly (readonly [string, string])[]): string {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `    ${left.padEnd(width)}   ${right}`.trimEnd()).join("\n");
}
