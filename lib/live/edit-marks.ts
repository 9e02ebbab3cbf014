// The page's cells as the editing sees them: where each stands in the log, and marks for what is changed, tried or faulty.

import type { Issue } from "../issue.ts";
import type { LogPath } from "../log/edit-types.ts";
import { visible } from "../page/visible.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { h } from "./edit-dom.ts";
import { pathKey, readAt } from "./edit-places.ts";

export interface Marks {
  /** Of a cell that can be edited. */
  pathOf(cell: Element): LogPath | undefined;
  cells(): readonly HTMLElement[];
  /** What stands for a figure of the log now. */
  cellOf(path: LogPath): HTMLElement | undefined;
  /** Remembers where on the page a faulty text was typed. */
  fault(cell: Element, path: LogPath): void;
  /** After the page was drawn, or the log changed. */
  refresh(): void;
}

/** A cell found again by its table, its row's name and its column, whatever was drawn meanwhile. */
interface CellSpot {
  readonly table: string;
  readonly row: string;
  readonly column: number;
}

interface Fault extends CellSpot {
  readonly path: LogPath;
}

export function pageMarks(bench: Bench, main: HTMLElement): Marks {
  const paths = new WeakMap<Element, LogPath>();
  const faults = new Map<string, Fault>();
  const cells = (): HTMLElement[] => [...main.querySelectorAll<HTMLElement>("[data-at], .live-faulty")];

  function locate(): void {
    for (const cell of main.querySelectorAll<HTMLElement>("[data-at]")) {
      const place = readAt(cell.dataset.at ?? "");
      const path = place && bench.places().at(place);
      if (path) paths.set(cell, path);
      else paths.delete(cell);
    }
  }

  function mark(): void {
    const changed = new Map(bench.changes().map((change) => [pathKey(change.path), change]));
    for (const cell of main.querySelectorAll<HTMLElement>("[data-at]")) {
      const path = paths.get(cell);
      const change = path && changed.size > 0 ? changed.get(pathKey(path)) : undefined;
      const tried = path && bench.tried(path);
      cell.classList.toggle("live-changed", change !== undefined);
      cell.classList.toggle("live-tried", tried !== undefined);
      const says = [
        tried === undefined ? "" : "What if: tried, not saved",
        change?.was === undefined ? "" : `Changed, was ${change.was === "" ? "empty" : change.was}`,
      ].filter((text) => text !== "");
      if (says.length > 0) cell.title = visible(says.join(". "));
      else cell.removeAttribute("title");
    }
    for (const old of main.querySelectorAll(".live-faulty")) old.remove();
    for (const [key, fault] of faults) {
      const node = bench.places().get(fault.path);
      const issues = node ? bench.issuesAt(node).filter(({ severity }) => severity !== "note") : [];
      if (node?.kind !== "value" || issues.length === 0) faults.delete(key);
      else showFault(fault, node.text, issues);
    }
  }

  function showFault(fault: Fault, text: string, issues: readonly Issue[]): void {
    const td = cellAt(main, fault);
    if (!td) return;
    const cell = h(
      "span",
      { class: "live-faulty", role: "button", tabindex: 0 },
      h("span", { class: "live-typed" }, text === "" ? "empty" : text),
      h("span", { class: "fault" }, issues.map(issueWords).join(" ")),
    );
    paths.set(cell, fault.path);
    td.append(cell);
  }

  return {
    cells,
    pathOf: (cell) => paths.get(cell),
    cellOf: (path) => cells().find((cell) => pathKey(paths.get(cell) ?? []) === pathKey(path)),
    fault: (cell, path) => {
      const spot = spotOf(cell);
      if (spot) faults.set(pathKey(path), { ...spot, path });
    },
    refresh: () => {
      locate();
      mark();
    },
  };
}

function spotOf(cell: Element): CellSpot | undefined {
  const td = cell.closest<HTMLTableCellElement>("td,th");
  const tr = td?.closest("tr");
  if (!td || !tr) return undefined;
  return { table: captionOf(tr), row: tr.cells[0]?.textContent ?? "", column: td.cellIndex };
}

const captionOf = (row: Element): string => row.closest("table")?.caption?.textContent ?? "";

function cellAt(main: HTMLElement, { table, row, column }: CellSpot): HTMLElement | undefined {
  const rows = [...main.querySelectorAll<HTMLTableRowElement>("tbody tr")];
  return rows.find((tr) => tr.cells[0]?.textContent === row && captionOf(tr) === table)?.cells[column];
}
