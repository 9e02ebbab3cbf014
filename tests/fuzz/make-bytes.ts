// A log's file byte for byte: line ends mixed, marks at the head, other encodings, bytes that are no text.

import type { Dice } from "./dice.ts";
import { grammarLog } from "./make-log.ts";
import { mutatedLog } from "./make-mutated.ts";

/** The text with other line ends, one kind or any; and other spaces. */
export function otherLineEnds(dice: Dice, text: string): string {
  const one = dice.pick(["\r\n", "\r", "\n\n", "\n"]);
  const mixed = dice.chance(40);
  return text.replaceAll("\n", () =>
    mixed ? dice.pick(["\n", "\r\n", "\r", "\u2028", "\u0085", "\f\n", "\n"]) : one,
  );
}

const marks = [
  [],
  [],
  [0xef, 0xbb, 0xbf],
  [0xef, 0xbb, 0xbf, 0xef, 0xbb, 0xbf],
  [0xff, 0xfe],
  [0xfe, 0xff],
  [0x2b, 0x2f, 0x76],
];

/** What stands on the disk. */
export function logBytes(dice: Dice): Buffer {
  const [log] = dice.chance(50) ? grammarLog(dice) : mutatedLog(dice);
  const text = otherLineEnds(dice, log!.text);
  const encoding = dice.pick(["utf8", "utf8", "utf8", "utf16le", "latin1"] as const);
  const body = Buffer.from(text, encoding);
  if (dice.chance(10)) body.swap16.call(body.subarray(0, body.length - (body.length % 2)));
  for (let k = dice.pick([0, 0, 1, 3, 40]); k > 0 && body.length > 0; k--)
    body[dice.integer(0, body.length - 1)] = dice.pick([dice.integer(0, 255), 0, 0xc3, 0xff, 0x80, 0x1b]);
  return Buffer.concat([Buffer.from(dice.pick(marks)), body]);
}
