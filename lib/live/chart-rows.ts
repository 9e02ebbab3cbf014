// From a row of the data under a chart to its point: by the pointer, and by the keys once a row has the focus.

import type { ChartReader } from "./chart-reader.ts";

/** readerOf: of the figure that stands before the data. */
export function listenToRows(readerOf: (figure: Element) => ChartReader | undefined): void {
  const found = (
    event: Event,
  ): { readonly reader: ChartReader; readonly row: number | undefined } | undefined => {
    const target = event.target instanceof Element ? event.target : undefined;
    const figure = target?.closest(".chart-data")?.previousElementSibling;
    const reader = figure ? readerOf(figure) : undefined;
    const line = target?.closest("tr");
    return reader && { reader, row: line ? reader.row(line) : undefined };
  };
  const show = (event: Event): void => {
    const { reader, row } = found(event) ?? {};
    if (row !== undefined) reader?.showRow(row);
  };
  const rowHeld = (): boolean => document.activeElement instanceof HTMLTableRowElement;
  const leave = (event: Event): void => found(event)?.reader.hide();

  document.addEventListener("pointerover", (event) => {
    if (!rowHeld()) show(event);
  });
  document.addEventListener("pointerout", (event) => {
    if (!rowHeld()) leave(event);
  });
  document.addEventListener("focusin", show);
  document.addEventListener("focusout", leave);
  document.addEventListener("click", (event) => {
    const { reader, row } = found(event) ?? {};
    // Words of the table can still be marked and copied.
    if (row !== undefined && getSelection()?.isCollapsed !== false) reader?.focusRow(row);
  });
  document.addEventListener("keydown", (event) => {
    if (!(event.target instanceof HTMLTableRowElement)) return;
    const { reader, row } = found(event) ?? {};
    if (!reader || row === undefined) return;
    if (event.key === "ArrowDown" || event.key === "ArrowUp")
      reader.focusRow(row + (event.key === "ArrowDown" ? 1 : -1));
    else if (event.key === "Enter" || event.key === "Escape") reader.focus();
    else return;
    event.preventDefault();
  });
}
