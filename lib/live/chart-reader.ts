// Tells the figures of one chart: a ring about the point that is pointed at, a label beside it, its row in the data.

import { labelPlace } from "./chart-label.ts";
import { type ChartPlace, chartPlaces, nearest, type Shown, walked } from "./chart-places.ts";
import { h } from "./edit-dom.ts";

/** Dispatched at a chart's label when it is shown; detail: the words of the place. */
export const TOLD = "mullbook:told";

/** How near the pointer has to be, px of the window. */
const NEAR = { mouse: 18, touch: 34 };

export interface ChartReader {
  /** The page was worked out anew. */
  refresh(): void;
  /** Unless it has the focus. */
  hide(): void;
  focus(): void;
  /** Number of a line in the chart's data; undefined where it is none of them. */
  row(line: HTMLTableRowElement): number | undefined;
  showRow(row: number): void;
  focusRow(row: number): void;
}

/** Adds what reads a figure, which stands in the page as long as the figure does. */
export function chartReader(figure: HTMLElement): ChartReader {
  let lines = "";
  let places: ChartPlace[] = [];
  let at = 0;
  let told = false;
  const ring = h("div", {
    class: "live-ring",
    role: "slider",
    tabindex: "0",
    "aria-label": `Points of ${figure.querySelector("figcaption b")?.textContent?.replace(/\.$/, "").toLowerCase() ?? "the figure"}, arrow keys go from point to point`,
    "aria-valuemin": "1",
  });
  const words = h("p");
  const label = h("div", { class: "live-label", hidden: true }, words);
  const layer = h("div", { class: "live-reads", "data-live": true }, ring, label);
  const image = figure.firstElementChild as HTMLElement;
  figure.append(layer);

  const rows = (): HTMLCollectionOf<HTMLTableRowElement> | undefined => {
    const data = figure.nextElementSibling;
    return data?.matches(".chart-data") ? data.querySelector("table")?.tBodies[0]?.rows : undefined;
  };
  const held = (): boolean => layer.contains(document.activeElement);

  function refresh(): void {
    const now = figure.dataset.readings ?? "";
    if (now !== lines || places.length === 0) {
      const before = places[at];
      lines = now;
      places = chartPlaces(lines);
      const same = places.findIndex(({ layer, row }) => layer === before?.layer && row === before.row);
      // A point that was left out of a fit, or put back, stands in another layer and in the same row.
      const moved = same >= 0 ? same : places.findIndex(({ row }) => row === before?.row);
      at = Math.max(0, moved);
    }
    layer.hidden = places.length === 0;
    ring.setAttribute("aria-valuemax", String(Math.max(1, places.length)));
    name();
    if (told) show(at);
  }

  function name(): void {
    ring.setAttribute("aria-valuenow", String(at + 1));
    ring.setAttribute("aria-valuetext", places[at]?.words ?? "");
  }

  /** The drawing that the window shows, and how large it is drawn. */
  function drawing(): { readonly shown: Shown; readonly box: DOMRect; readonly scale: number } | undefined {
    for (const shown of ["wide", "narrow"] as const) {
      const svg = image.querySelector<SVGSVGElement>(`.${shown}>svg`);
      const box = svg?.getBoundingClientRect();
      if (svg && box && box.width > 0) return { shown, box, scale: box.width / svg.viewBox.baseVal.width };
    }
    return undefined;
  }

  function show(i: number): void {
    const place = places[i];
    const drawn = place && drawing();
    if (!drawn) {
      hide();
      return;
    }
    at = i;
    told = true;
    name();
    const { box, scale, shown } = drawn;
    const own = figure.getBoundingClientRect();
    const [x, y] = [
      box.left - own.left + place[shown][0] * scale,
      box.top - own.top + place[shown][1] * scale,
    ];
    if (words.textContent !== place.words) words.textContent = place.words;
    label.hidden = false;
    label.dispatchEvent(new CustomEvent(TOLD, { detail: place.words, bubbles: true }));
    layer.classList.add("live-told-here");
    ring.style.transform = `translate(${x}px,${y}px)`;
    const to = labelPlace({
      at: [x, y],
      label: { width: label.offsetWidth, height: label.offsetHeight },
      from: 4 - own.left,
      to: document.documentElement.clientWidth - own.left - 4,
      above: own.top,
    });
    label.style.transform = `translate(${to.x}px,${to.y}px)`;
    mark(place.row);
  }

  function mark(row?: number): void {
    for (const one of figure.nextElementSibling?.querySelectorAll(".live-read") ?? [])
      one.classList.remove("live-read");
    if (row !== undefined) rows()?.[row]?.classList.add("live-read");
  }

  function hide(): void {
    told = false;
    label.hidden = true;
    layer.classList.remove("live-told-here");
    mark();
  }

  function pointed(event: MouseEvent, within: number): number | undefined {
    const drawn = drawing();
    if (!drawn) return undefined;
    const { box, scale, shown } = drawn;
    const point = [(event.clientX - box.left) / scale, (event.clientY - box.top) / scale] as const;
    return nearest(places, shown, point, within / scale);
  }

  image.addEventListener("pointermove", (event) => {
    if (event.pointerType === "touch" || held()) return;
    const i = pointed(event, NEAR.mouse);
    if (i !== undefined) show(i);
    else if (!label.matches(":hover")) hide();
  });
  image.addEventListener("click", (event) => {
    const touch = (event as PointerEvent).pointerType !== "mouse";
    const i = pointed(event, touch ? NEAR.touch : NEAR.mouse);
    if (i === undefined) {
      hide();
      return;
    }
    at = i;
    ring.focus({ preventScroll: true });
    show(i);
  });
  figure.addEventListener("pointerleave", (event) => {
    if (event.pointerType !== "touch" && !held()) hide();
  });
  ring.addEventListener("focus", () => show(at));
  layer.addEventListener("focusout", ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && layer.contains(relatedTarget))) hide();
  });
  layer.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape") {
      hide();
      ring.focus({ preventScroll: true });
      hide();
    } else if (event.target === ring && event.key === "Enter") toRow();
    else if (event.target === ring) {
      const to = walked(places, at, event.key, drawing()?.shown ?? "wide");
      if (to === undefined) return;
      show(to);
    } else return;
    event.preventDefault();
  });

  function toRow(): void {
    const data = figure.nextElementSibling;
    if (!(data instanceof HTMLDetailsElement)) return;
    data.open = true;
    focusRow(places[at]?.row ?? 0);
  }

  function focusRow(row: number): void {
    const line = rows()?.[row];
    if (!line) return;
    line.tabIndex = -1;
    line.focus();
  }

  refresh();
  return {
    refresh,
    hide: () => held() || hide(),
    focus: () => ring.focus(),
    focusRow,
    showRow: (row) => {
      const i = places.findIndex((place) => place.row === row);
      if (i >= 0) show(i);
      else hide();
    },
    row: (line) => (rows()?.[line.sectionRowIndex] === line ? line.sectionRowIndex : undefined),
  };
}
