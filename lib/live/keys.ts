// Keys that hold on the whole page.

export interface PageKeys {
  undo(): void;
  redo(): void;
  save(): void;
  /** Opens the cell; typed: the character that was pressed, which takes the place of what stood there. */
  openCell(cell: HTMLElement, typed?: string): void;
}

/** What a key press means; undefined where it is the browser's. */
export type KeyMeaning = "undo" | "redo" | "save" | "open" | "type";

type Press = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">;

/** inField: a text field has the focus, whose own undo comes first. onCell: a cell that can be edited has it. */
export function keyMeaning(
  { key, ctrlKey, metaKey, shiftKey, altKey }: Press,
  { inField, onCell }: { readonly inField: boolean; readonly onCell: boolean },
): KeyMeaning | undefined {
  const letter = key.toLowerCase();
  if (altKey) return undefined;
  if (ctrlKey || metaKey) {
    if (letter === "s" && !shiftKey) return "save";
    if (inField) return undefined;
    if (letter === "z") return shiftKey ? "redo" : "undo";
    return letter === "y" && !shiftKey ? "redo" : undefined;
  }
  if (!onCell) return undefined;
  if (key === "Enter" || key === "F2" || key === " ") return "open";
  return [...key].length === 1 && /[\p{L}\p{N}.,+±~<-]/u.test(key) ? "type" : undefined;
}

export function listenForKeys(keys: PageKeys): void {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.isComposing) return;
    const target = event.target instanceof HTMLElement ? event.target : undefined;
    const cell = target?.closest<HTMLElement>("[data-at], .live-faulty") ?? undefined;
    // A field whose text is as it was has nothing of its own to undo.
    const inField =
      target instanceof HTMLInputElement && target.type === "text" && target.value !== target.defaultValue;
    const meaning = keyMeaning(event, { inField, onCell: cell !== undefined });
    if (meaning === undefined) return;
    event.preventDefault();
    if (meaning === "open") keys.openCell(cell!);
    else if (meaning === "type") keys.openCell(cell!, event.key);
    else keys[meaning]();
  });
}
