// Elements of the furniture. Text becomes text nodes and attribute values only, never markup, and cannot turn the line
// round.

import { isolated, visible } from "../page/visible.ts";

export type Child = Node | string | undefined | false;
type Listeners = { readonly [event: string]: (event: never) => void };

/** An element with attributes (undefined and false are left out, true is an empty one), listeners by "on…", and children. */
export function h<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: { readonly [name: string]: string | number | boolean | undefined | Listeners[string] } = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    if (typeof value === "function") element.addEventListener(name.slice(2), value as EventListener);
    else
      element.setAttribute(
        name,
        value === true ? "" : READ.has(name) ? shownText(String(value)) : String(value),
      );
  }
  for (const child of children)
    if (child !== undefined && child !== false)
      element.append(typeof child === "string" ? shownText(child) : child);
  return element;
}

/** Attributes that are read by people. */
const READ: ReadonlySet<string> = new Set(["aria-label", "aria-valuetext", "placeholder", "title"]);
/** A text of the log as it may be shown. */
export const shownText = (text: string): string => isolated(visible(text));

/** In place of textContent: what a log may bring in shows all of itself. */
export function setText(element: Element, text: string): void {
  element.textContent = shownText(text);
}

export function button(
  says: string,
  press: () => void,
  more: { readonly [name: string]: string | boolean | undefined } = {},
) {
  return h("button", { type: "button", onclick: press, ...more }, says);
}

/** Whether a finger points: there may be neither Enter nor Escape then. */
export const byFinger = (): boolean => matchMedia("(pointer: coarse)").matches;

/**
 * What is shown in place of a container's content. The focus stays where it was, by data-key, and so does what was typed
 * into fields and not taken yet, unless what stands in them has changed meanwhile.
 */
export function refill(container: HTMLElement, children: readonly Child[]): void {
  const active = document.activeElement;
  const held = active instanceof HTMLElement && container.contains(active) ? active : undefined;
  const marked =
    held instanceof HTMLInputElement && held.type === "text" ? [held.selectionStart, held.selectionEnd] : [];
  const typed = new Map(
    inputsIn(container).flatMap(({ dataset: { key }, value, defaultValue }) =>
      key === undefined || value === defaultValue ? [] : [[key, { value, defaultValue }] as const],
    ),
  );
  const scrolled = container.scrollTop;
  container.replaceChildren(
    ...children
      .filter((child) => child !== undefined && child !== false)
      .map((child) => (typeof child === "string" ? shownText(child) : child)),
  );
  container.scrollTop = scrolled;
  for (const input of inputsIn(container)) {
    const kept = typed.get(input.dataset.key ?? "");
    if (kept?.defaultValue === input.defaultValue) input.value = kept.value;
  }
  const key = held?.dataset.key;
  const all = [...container.querySelectorAll<HTMLElement>("[data-key]")];
  const again = key === undefined ? undefined : all.find((one) => one.dataset.key === key);
  // What had it may be gone, as a batch that is undone: it stays in the container, where keys still mean something.
  (again ?? (held && container.tabIndex === -1 ? container : undefined))?.focus({ preventScroll: true });
  const [from = null, to = null] = marked;
  if (again instanceof HTMLInputElement && from !== null) again.setSelectionRange(from, to);
}

const inputsIn = (container: HTMLElement): HTMLInputElement[] => [
  ...container.querySelectorAll<HTMLInputElement>("input[data-key]"),
];
