// A table of the log to fill in: rows of a list, entries with names, or a CSV file.

import type { Issue } from "../issue.ts";
import type { LogEdit } from "../log/edit-types.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { button, h, shownText } from "./edit-dom.ts";
import { pathKey } from "./edit-places.ts";
import { counted, entryName, pathWords } from "./edit-words.ts";
import { freshId, removeAt, takesText, valueField } from "./panel-field.ts";
import type { Folds } from "./panel-folds.ts";
import { copiedTable, filledBy, pastedBlock, type RowsNode } from "./paste.ts";

/** Rows of a long table that are shown at once; the last ones, where new rows come. */
const SHOWN = 40;

export function rowsTable(bench: Bench, node: RowsNode, folds: Folds, redraw: () => void): HTMLElement {
  const { path, columns, rows, names } = node;
  const key = pathKey(path);
  const shown = folds.rows.get(key) ?? SHOWN;
  const from = Math.max(0, rows.length - shown);
  const told = h("div", { class: "live-row-told" });
  const table = h(
    "table",
    { onpaste: (event: ClipboardEvent) => pasted(bench, node, event) },
    h(
      "thead",
      {},
      h(
        "tr",
        {},
        h("th", { scope: "col" }, names ? "name" : "row"),
        ...columns.map((column) => h("th", { scope: "col" }, column)),
        h("td", {}),
      ),
    ),
    h(
      "tbody",
      {},
      ...rows.slice(from).map((_, k) => rowOf(bench, node, from + k, told)),
      newRow(bench, node),
    ),
  );
  table.addEventListener("keydown", (event) => walk(event, table));
  return h(
    "div",
    { class: "live-rows" },
    from > 0 &&
      button(`Show ${Math.min(from, SHOWN)} rows before these`, () => {
        folds.rows.set(key, shown + SHOWN);
        redraw();
      }),
    h("div", { class: "live-wide", role: "region", "aria-label": pathWords(path), tabindex: 0 }, table),
    told,
    h(
      "p",
      { class: "live-actions" },
      button("Add a row", () => table.querySelector<HTMLElement>(".live-new input")?.focus(), {
        "data-key": `add ${key}`,
      }),
      button("Copy the table", () => void copied(bench, node), { "data-key": `copy ${key}` }),
    ),
  );
}

function rowOf(
  bench: Bench,
  { path, columns, rows, names }: RowsNode,
  r: number,
  told: HTMLElement,
): HTMLElement {
  const name = names?.[r];
  const says = name ?? `row ${r + 1}`;
  const rowPath = [...path, name ?? r];
  const cells = columns.map((column, c) => {
    const cell = rows[r]![c];
    const label = `${says}, ${column}`;
    if (cell?.kind === "value") {
      const field = valueField(bench, cell, label);
      if (!field.told.hidden) {
        field.told.prepend(shownText(`${label}: `));
        told.append(field.told);
      }
      return cellWith(field.input, cell.text);
    }
    const input = emptyField(label, pathKey([...rowPath, column]), "");
    takesText(input, (text) => {
      if (text !== "")
        tell(bench, bench.apply([{ kind: "add", to: rowPath, entries: { [entryName([column])]: text } }]));
    });
    return cellWith(input, "");
  });
  return h(
    "tr",
    {},
    h("th", { scope: "row" }, name ?? String(r + 1)),
    ...cells,
    h(
      "td",
      {},
      button("×", () => removeAt(bench, rowPath), {
        class: "live-x",
        "aria-label": `Take out ${says}`,
        title: `Take out ${says}`,
        "data-key": `out ${pathKey(rowPath)}`,
      }),
    ),
  );
}

/** The line below the last: the first figure typed into it makes a row of it. */
function newRow(bench: Bench, { path, columns, rows, names }: RowsNode): HTMLElement {
  const name = names && emptyField("name of a new row", `new ${pathKey(path)}`, "new name");
  const fields = columns.map((column) => {
    const input = emptyField(`new row, ${column}`, pathKey([...path, names ? "" : rows.length, column]), "");
    takesText(input, (text) => {
      if (text === "") return;
      if (name && name.value.trim() === "") {
        bench.say("Give the new row a name first.");
        name.focus();
        return;
      }
      const entries = Object.fromEntries(
        fields.flatMap((field, c) =>
          field.value.trim() === "" ? [] : [[entryName([columns[c]!]), field.value.trim()]],
        ),
      );
      const edit: LogEdit = { kind: "add", to: path, entries, ...(name ? { name: name.value.trim() } : {}) };
      // What comes next lies in the row that this makes: the focus is found again by its key.
      if (name)
        for (const [c, field] of fields.entries())
          field.dataset.key = pathKey([...path, name.value.trim(), columns[c]!]);
      tell(bench, bench.apply([edit]));
    });
    return input;
  });
  return h(
    "tr",
    { class: "live-new" },
    h("th", { scope: "row" }, name ?? "new"),
    ...fields.map((input) => cellWith(input, "")),
    h("td", {}),
  );
}

function emptyField(label: string, key: string, placeholder: string): HTMLInputElement {
  return h("input", {
    id: freshId(),
    type: "text",
    value: "",
    placeholder,
    "aria-label": label,
    "data-key": key,
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    enterkeyhint: "done",
  });
}

function cellWith(input: HTMLInputElement, text: string): HTMLElement {
  input.size = Math.max(5, Math.min(24, text.length + 1));
  return h("td", {}, input);
}

/** Arrows up and down, and Enter, go along the column. */
function walk(event: KeyboardEvent, table: HTMLElement): void {
  const step = { ArrowUp: -1, ArrowDown: 1, Enter: 1 }[event.key];
  const td = event.target instanceof HTMLInputElement ? event.target.closest("td,th") : null;
  const tr = td?.closest("tr");
  if (step === undefined || !td || !tr || event.altKey || event.ctrlKey) return;
  const lines = [...table.querySelectorAll("tbody tr")];
  const to = lines[lines.indexOf(tr) + step]?.children[[...tr.children].indexOf(td)]?.querySelector("input");
  if (!to) return;
  event.preventDefault();
  to.focus();
  to.select();
}

function pasted(bench: Bench, node: RowsNode, event: ClipboardEvent): void {
  const input = event.target;
  const block = pastedBlock(event.clipboardData?.getData("text/plain") ?? "");
  if (!block || !(input instanceof HTMLInputElement)) return;
  event.preventDefault();
  const lines = [...input.closest("tbody")!.querySelectorAll("tr")];
  const first = Number(node.rows.length) - (lines.length - 1);
  const row = first + lines.indexOf(input.closest("tr")!);
  const column = [...input.closest("tr")!.children].indexOf(input.closest("td,th")!) - 1;
  const { edits, left } = filledBy(block, node, row, Math.max(0, column));
  const wrong = bench.apply(edits).filter(({ severity }) => severity === "error");
  const size = `${counted(block.length, "row")} of ${counted(Math.max(...block.map(({ length }) => length)), "cell")} pasted into ${pathWords(node.path)}.`;
  const unfit = left.length === 0 ? "" : ` Did not fit: ${left.join("; ")}.`;
  bench.say([size + unfit, ...wrong.map(issueWords)].join(" "));
}

async function copied(bench: Bench, node: RowsNode): Promise<void> {
  const text = copiedTable(node);
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    // Without leave for the clipboard, a copy event can still fill it.
    const fill = (event: ClipboardEvent): void => {
      event.preventDefault();
      event.clipboardData?.setData("text/plain", text);
    };
    document.addEventListener("copy", fill, { once: true });
    document.execCommand("copy");
    document.removeEventListener("copy", fill);
  }
  bench.say(`${counted(node.rows.length, "row")} copied, with tabs between the cells.`);
}

function tell(bench: Bench, issues: readonly Issue[]): void {
  bench.say(
    issues
      .filter(({ severity }) => severity !== "note")
      .map(issueWords)
      .join(" "),
  );
}
