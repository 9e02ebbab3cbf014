// Makes the charts of a live page tell their figures, from the moment that it opens.

import { type ChartReader, chartReader } from "./chart-reader.ts";
import { listenToRows } from "./chart-rows.ts";
import { REDRAWN, SETTLED } from "./redraw.ts";

export function startCharts(): void {
  const readers = new WeakMap<Element, ChartReader>();
  const refresh = (): void => {
    for (const figure of document.querySelectorAll<HTMLElement>("main figure")) {
      const reader = readers.get(figure);
      if (reader) reader.refresh();
      else if (figure.dataset.readings) readers.set(figure, chartReader(figure));
    }
  };
  listenToRows((figure) => readers.get(figure));
  // A drawing that comes later than its figures may be of another height.
  for (const event of [REDRAWN, SETTLED]) document.addEventListener(event, refresh);
  refresh();
}
