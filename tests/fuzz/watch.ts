// What the runner sees of a worker: which case it is at and since when, in memory that both share.

import type { Texts } from "./texts.ts";

const TEXT = 2_000_000;

export interface Board {
  readonly ticks: Int32Array;
  readonly text: Uint8Array;
}

export function newBoard(): SharedArrayBuffer {
  return new SharedArrayBuffer(8 + TEXT);
}

export const boardOn = (memory: SharedArrayBuffer): Board => ({
  ticks: new Int32Array(memory, 0, 2),
  text: new Uint8Array(memory, 8),
});

const encoder = new TextEncoder();

/** A tick for each step; the text only when it is another. */
export function noteOn(board: Board): (step: string, texts: Texts) => void {
  let before: Texts | undefined;
  return (step, texts) => {
    if (texts !== before) {
      before = texts;
      board.ticks[1] = encoder.encodeInto(JSON.stringify({ step, texts }), board.text).written;
    }
    Atomics.add(board.ticks, 0, 1);
  };
}

export const noted = ({ ticks, text }: Board): string => new TextDecoder().decode(text.slice(0, ticks[1]));
