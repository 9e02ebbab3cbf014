// From the words of a call to what it asks for, or to what is wrong with it.

import { parseArgs } from "node:util";
import { nearest } from "../numbers/nearest.ts";
import { COMMANDS, type Command, FORMATS, type Format } from "./commands.ts";
import { usage } from "./help.ts";
import type { Refusal } from "./refusal.ts";

export type Call =
  | { readonly asks: "version" }
  | { readonly asks: "help"; readonly about?: Command }
  | {
      readonly asks: "command";
      readonly command: Command;
      readonly words: readonly string[];
      readonly to?: string;
      readonly as?: Format;
      readonly for?: string;
      readonly live?: true;
    };

/** @param argv  What follows the program's name. */
export function readArguments(argv: readonly string[]): Call | Refusal {
  // Not strict: what is unknown gets an answer in our own words.
  const { values, tokens, positionals } = parseArgs({
    args: [...argv],
    options: {
      to: { type: "string" },
      as: { type: "string" },
      for: { type: "string" },
      live: { type: "boolean" },
      help: { type: "boolean", short: "h" },
      version: { type: "boolean" },
    },
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const [name, ...words] = positionals;
  const options = tokens.flatMap((token) => (token.kind === "option" ? [token] : []));
  if (name === undefined && options.every((option) => option.name === "help")) return { asks: "help" };
  if (name === undefined && options.some((option) => option.name === "version")) return { asks: "version" };
  const command = name === undefined ? undefined : COMMANDS.find((known) => known.name === name);
  if (name === undefined) return { refused: "No command is given.", remedy: "See: mullbook help" };
  if (command === undefined) return unknownCommand(name);
  const bundled = wordWithHyphen(argv);
  if (bundled !== undefined) return unknownOption(command, bundled, [...command.options, "help"]);
  if (values.help === true) return { asks: "help", about: command };
  if (command.name === "help") return helpOn(words);

  const allowed = [...command.options, "help"];
  for (const { name: option, rawName, value } of options) {
    if (!allowed.includes(option)) return unknownOption(command, rawName, allowed);
    if (options.filter((other) => other.name === option).length > 1)
      return { refused: `${rawName} is given twice.`, remedy: `Give it once: ${usage(command)}` };
    if (option === "live") {
      if (value === undefined) continue;
      return { refused: `${rawName} takes no word after it.`, remedy: usage(command) };
    }
    if (typeof value !== "string" || value === "" || value.startsWith("-"))
      return { refused: `${rawName} wants a word after it.`, remedy: usage(command) };
  }
  const { to, as, for: what, live } = values;
  const format = FORMATS.find((known) => known === as);
  if (as !== undefined && format === undefined) return unknownFormat(String(as));
  return (
    wordsRefused(command, words) ?? {
      asks: "command",
      command,
      words,
      ...(typeof to === "string" ? { to } : {}),
      ...(format === undefined ? {} : { as: format }),
      ...(typeof what === "string" ? { for: what } : {}),
      ...(live === true ? { live } : {}),
    }
  );
}

function unknownCommand(name: string): Refusal {
  if (name === "version")
    return { refused: 'There is no command "version".', remedy: "The option: --version" };
  const near = nearest(
    name,
    COMMANDS.map((command) => command.name),
  );
  return {
    refused: `There is no command "${name}".`,
    remedy: near === undefined ? "See: mullbook help" : `Did you mean: mullbook ${near}`,
  };
}

/** "-sands.yaml" is no bundle of the options s, a, n, d and so on: there is one of a single letter only. */
function wordWithHyphen(argv: readonly string[]): string | undefined {
  const end = argv.indexOf("--");
  return argv.slice(0, end < 0 ? argv.length : end).find((word) => /^-[^-]./.test(word));
}

function unknownOption(command: Command, rawName: string, allowed: readonly string[]): Refusal {
  const near = nearest(rawName.replace(/^-+/, ""), allowed);
  const file = /^-[^-].*\./.test(rawName) ? `A file of that name is written ./${rawName}. ` : "";
  return {
    refused: `"mullbook ${command.name}" knows no ${rawName}.`,
    remedy: near === undefined ? `${file}${usage(command)}` : `Did you mean --${near}? ${usage(command)}`,
  };
}

function unknownFormat(as: string): Refusal {
  const near = nearest(as, FORMATS) ?? (as === "md" ? "markdown" : undefined);
  return {
    refused: `A page cannot be written as "${as}".`,
    remedy: near === undefined ? `It can be written as ${FORMATS.join(", ")}.` : `Did you mean: --as ${near}`,
  };
}

function helpOn([topic]: readonly string[]): Call | Refusal {
  if (topic === undefined) return { asks: "help" };
  const about = COMMANDS.find((command) => command.name === topic);
  return about ? { asks: "help", about } : unknownCommand(topic);
}

function wordsRefused(command: Command, words: readonly string[]): Refusal | undefined {
  const most = command.words.length + (command.also === undefined ? 0 : 1);
  if (words.length >= command.words.length && words.length <= most) return undefined;
  if (command.bare && words.length === 0) return undefined;
  const wants = command.words.map((word) => `a ${word}`).join(" and ") || "nothing";
  const has = words.length === 0 ? "none is given" : `given: ${words.join(", ")}`;
  const example = command.examples[0]?.[0] ?? "";
  const one = words.length > most && most > 0 ? " One at a time; a name with spaces goes in quotes." : "";
  return {
    refused: `"mullbook ${command.name}" wants ${wants} after it; ${has}.`,
    remedy: `For example: ${example}${one}`,
  };
}
