// Bench cards: one printed page for each test, check and event, with boxes to write in and the lines to copy into the log.

import { checkCards } from "./card-checks.ts";
import { eventCards } from "./card-events.ts";
import { heapCards } from "./card-heap.ts";
import { cardBody } from "./card-html.ts";
import type { Card, CardBox } from "./card-kinds.ts";
import { sheetCards } from "./card-sheets.ts";
import { CARD_STYLE } from "./card-style.ts";
import { testCards } from "./card-tests.ts";
import { htmlDocument } from "./html.ts";
import { pageStyle } from "./style.ts";

export type { Card, CardBox };

/** Every card, in the order of the log. */
export const cards: readonly Card[] = [
  ...testCards,
  ...sheetCards,
  ...checkCards,
  ...heapCards,
  ...eventCards,
];

/** The card of that name, or undefined; "green compression" and "green-compression" are one name. */
export function cardNamed(name: string): Card | undefined {
  const plain = name
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  return cards.find((card) => card.name === plain);
}

/**
 * The card as one HTML file that prints on one page, A4 or Letter: the hazard first, then rig, steps, boxes to write in
 * with the keys and in the order of the log, and the log's lines to copy.
 * @example await writeFile("moisture-card.html", await writeCard(cardNamed("moisture")!));
 */
export async function writeCard(card: Card): Promise<string> {
  return htmlDocument({
    lang: "en",
    title: `${card.title}: bench card`,
    description: `A bench card to print: ${card.does}.`,
    style: `${pageStyle()}\n${CARD_STYLE}`,
    body: cardBody(card),
  });
}
