// What a log or a CSV row looks like once parsed: our own plain tree, every part with its place.

import type { Issue, Place } from "../issue.ts";

/** A scalar as the founder typed it: `3.20` stays "3.20". */
export interface TextNode {
  readonly kind: "text";
  readonly text: string;
  readonly place: Place;
}
/** A key with nothing after it. */
export interface EmptyNode {
  readonly kind: "empty";
  readonly place: Place;
  /** True where lines stand below it that could not be read: those have been complained about. */
  readonly holed?: boolean;
}
export interface Entry {
  readonly key: string;
  readonly keyPlace: Place;
  readonly value: LogNode;
}
/** Entries in file order; a key may stand twice, and the reader of the map complains about it. */
export interface MapNode {
  readonly kind: "map";
  readonly entries: readonly Entry[];
  readonly place: Place;
  /** True where lines among or below its entries could not be read. */
  readonly holed?: boolean;
}
export interface ListNode {
  readonly kind: "list";
  readonly items: readonly LogNode[];
  readonly place: Place;
}
export type LogNode = TextNode | EmptyNode | MapNode | ListNode;

export interface PlacedComplaint {
  readonly complaint: Issue;
  readonly place: Place;
}

/** How a reader hands over a complaint; who collects it adds what it is about. */
export type Report = (complaint: Issue, place: Place) => void;

/** True where lines that belong to the node could not be read, so that what seems to be missing may only be unread. */
export function isHoled(node: LogNode | undefined): boolean {
  return (node?.kind === "map" || node?.kind === "empty") && node.holed === true;
}

/** A key or name as it is compared: case and doubled spaces don't count. */
export function plainName(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLowerCase();
}
