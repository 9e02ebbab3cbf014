// What a live page carries besides what is seen: the log's texts, and where they are kept.

import type { LogText } from "../log/types.ts";

export interface LiveSetup {
  /** The log first, then the CSV files that it names. */
  readonly texts: readonly LogText[];
  /** Name of the notebook. */
  readonly notebook: string;
  readonly keep: LiveKeep;
}

/** What a live page looks at before the library is unpacked. */
export interface LiveStart extends LiveSetup {
  /** What a point of a chart may be left out of the fits as. */
  readonly batches: readonly StartBatch[];
}

export interface StartBatch {
  readonly name: string;
  /** By the log. */
  readonly isOut: boolean;
}

export type LiveKeep =
  /** A page from a file: a copy of the log is handed out. */
  | { readonly kind: "copy" }
  /** A page from the server: it saves into the log itself. */
  | {
      readonly kind: "server";
      /** Addresses of saving and of what changed elsewhere. */
      readonly save: string;
      readonly events: string;
      readonly others: readonly OtherPage[];
    };

/** Another page of the same log. */
export interface OtherPage {
  readonly name: string;
  readonly href: string;
  readonly question: string;
}
