// What is open in the log's panel.

/** Folds and forms by their keys, and how many rows of a long table are shown. */
export interface Folds {
  readonly open: Set<string>;
  readonly rows: Map<string, number>;
}
