// Figures of a live page turned by a script, each edit timed.

import type { Page as Tab } from "playwright-core";
import { logOutline, type OutlineNode } from "../../lib/index.ts";
import type { LogText } from "../../lib/log/types.ts";

export interface Timed {
  readonly sync: number;
  readonly all: number;
}

/**
 * Turns a figure to a value that it has not had before, so often, each time until everything that the window shows is
 * right; ms. A value that comes again would be answered by the drawings that are kept for the way back. The walk goes
 * up by a last digit at a time, and comes by the same values again once their drawings are forgotten.
 */
export function turn(
  tab: Tab,
  at: { readonly offset: number; readonly length: number },
  times: number,
): Promise<Timed[]> {
  return tab.evaluate(
    async ([{ offset, length }, count]) => {
      const { mullbookSession: session } = globalThis as unknown as {
        mullbookSession: {
          texts: { name: string; text: string }[];
          edit(edit: object): unknown;
        };
      };
      const kept = globalThis as unknown as { walk?: { at: number } };
      kept.walk ??= { at: 0 };
      const walk = kept.walk;
      const measured: { sync: number; all: number }[] = [];
      for (let i = 0; i < count; i++) {
        const { name, text } = session.texts[0]!;
        const old = text.slice(offset, offset + length);
        const turned = old.replace(/\d+(?:\.\d+)?/, (number) => {
          const decimals = number.split(".")[1]?.length ?? 0;
          const step = 10 ** -decimals * (walk.at < 70 ? 1 : -69);
          return (Number(number) + step).toFixed(decimals);
        });
        walk.at = walk.at < 70 ? walk.at + 1 : 1;
        const started = performance.now();
        const settled = new Promise((done) =>
          document.addEventListener("mullbook:settled", done, { once: true }),
        );
        session.edit({ kind: "write", at: { file: name, offset, length }, text: turned });
        const sync = performance.now() - started;
        await settled;
        measured.push({ sync, all: performance.now() - started });
      }
      return measured;
    },
    [at, times] as const,
  );
}

export function figureIn(
  texts: readonly LogText[],
  path: RegExp,
): { readonly offset: number; readonly length: number } {
  const values = (nodes: readonly (OutlineNode | undefined)[]): OutlineNode[] =>
    nodes.flatMap((node) =>
      !node
        ? []
        : node.kind === "value"
          ? [node]
          : values(node.kind === "group" ? node.parts : node.rows.flat()),
    );
  const found = values(logOutline(texts)).find(
    (node) => path.test(node.path.join("/")) && node.kind === "value" && /\d/.test(node.text),
  );
  if (!found) throw new Error(`no figure at ${path}`);
  return { offset: found.place.offset!, length: found.place.length! };
}
