// Every public name with its declaration and its comment, from the types that go with the build.

import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type Declaration, declarationIn } from "./declaration.ts";

export interface ReferenceEntry extends Declaration {
  readonly name: string;
  /** Folder of lib, or "issue": the stage of the way of the data. */
  readonly stage: string;
}

/** The stages in the order in which data pass them. */
export const stages: { readonly [stage: string]: string } = {
  log: "The log: read and checked",
  sheet: "Sheets: named columns, formulas, a foot",
  sand: "Sand: one model a function, usual ranges, sources",
  trial: "Trials: curves, aims, the next batch, control",
  finding: "Findings: what the numbers say",
  chart: "Charts: Vega-Lite specs, pure functions",
  page: "Pages and notebooks",
  quantity: "Quantities: a number with its unit and its ±",
  numbers: "Plain numbers: sums, fits, tests",
  issue: "What can be wrong, and where",
  catalogue: "Messages and other words of the library",
};

/** All that folder/index.d.ts exports, by stage and then in its order; undefined where it is not there. */
export function referenceEntries(folder: string): readonly ReferenceEntry[] | undefined {
  const index = join(folder, "index.d.ts");
  if (!existsSync(index)) return undefined;
  const texts = new Map<string, string>();
  const textOf = (path: string): string => {
    const text = texts.get(path) ?? readFileSync(path, "utf8");
    texts.set(path, text);
    return text;
  };
  const entries = handedOn(textOf(index), "export").flatMap(({ name, from }): ReferenceEntry[] => {
    const found = follow(join(folder, typesOf(from)), name, textOf);
    const stage = from.split("/")[1]!.replace(/\.ts$/, "");
    return found ? [{ ...found, name, stage }] : [];
  });
  const order = Object.keys(stages);
  return entries.toSorted((a, b) => order.indexOf(a.stage) - order.indexOf(b.stage));
}

/** The declaration, in the file itself or in one that it hands on, also by way of an import. */
function follow(path: string, name: string, textOf: (path: string) => string): Declaration | undefined {
  const text = textOf(path);
  const own = declarationIn(text, name);
  if (own) return own;
  const further = handedOn(text, "export|import").find((one) => one.name === name);
  return further && follow(join(dirname(path), typesOf(further.from)), name, textOf);
}

function handedOn(text: string, by: string): { readonly name: string; readonly from: string }[] {
  const pattern = new RegExp(`^(?:${by}) (?:type )?\\{([^}]*)\\} from "([^"]+)";`, "gm");
  return [...text.matchAll(pattern)].flatMap(([, names, from]) =>
    names!
      .split(",")
      .map((name) => name.trim().replace(/^type /, ""))
      .filter((name) => name !== "")
      .map((name) => ({ name, from: from! })),
  );
}

function typesOf(from: string): string {
  return from.replace(/\.ts$/, ".d.ts");
}
