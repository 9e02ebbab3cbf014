// mullbook card: a bench card to print, or the list of them.

import { nearest } from "../numbers/nearest.ts";
import { cardNamed, cards, writeCard } from "../page/card.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { isRefusal } from "./refusal.ts";
import { writeFiles } from "./write-files.ts";

export async function card(
  word: string,
  { to = "." }: { readonly to?: string },
  console: Console,
): Promise<ExitCode> {
  if (word === "") {
    const width = Math.max(...cards.map(({ name }) => name.length));
    for (const { name, does } of cards) console.result(`${name.padEnd(width)}   ${does}`);
    return 0;
  }
  const found = cardNamed(word);
  if (!found) return refuse(console, unknown(word));
  const written = writeFiles(to, { [`card-${found.name}.html`]: await writeCard(found) }, []);
  if (isRefusal(written)) return refuse(console, written);
  for (const path of written.paths) console.result(path);
  console.say("Open it in a browser and print it: one page.");
  return 0;
}

/** "permeability" alone has four cards, one for each rig. */
function unknown(word: string): { readonly refused: string; readonly remedy: string } {
  const names = cards.map(({ name }) => name);
  const begin = names.filter((name) => name.startsWith(`${word.trim().toLowerCase()}-`));
  const near = nearest(word, names);
  if (word.trim().toLowerCase() === "recipe")
    return {
      refused: "The card of a recipe holds the weights of your own log, so it stands on its page.",
      remedy: "Write it: mullbook write recipe my-sands.yaml; the card prints on a sheet of its own.",
    };
  return {
    refused: `There is no card "${word}".`,
    remedy:
      begin.length > 0
        ? `There are: ${begin.join(", ")}.`
        : near === undefined
          ? "See: mullbook card"
          : `Did you mean: mullbook card ${near}`,
  };
}
