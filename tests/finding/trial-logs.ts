// Small invented logs for the findings of a trial.

import { type Log, readLog } from "../../lib/index.ts";

export interface InventedBatch {
  readonly name: string;
  readonly moisture?: string;
  readonly compactability?: string;
  readonly strength?: string;
  readonly permeability?: string;
  /** Further lines, each with its own indentation of four. */
  readonly more?: readonly string[];
}

export function logOf(batches: readonly InventedBatch[], head: readonly string[] = []): Log {
  const lines = batches.flatMap(
    ({ name, moisture, compactability, strength, permeability, more = [] }, k) => [
      `  ${name}:`,
      `    date: 2026-05-${String(k + 1).padStart(2, "0")}`,
      `    order: ${k + 1}`,
      ...(moisture ? [`    moisture: ${moisture}`] : []),
      ...(compactability ? [`    compactability: ${compactability}`] : []),
      ...(strength ? [`    green compression: ${strength}`] : []),
      ...(permeability ? [`    permeability: ${permeability}`] : []),
      ...more.map((line) => `    ${line}`),
    ],
  );
  const text = [
    "format: 1",
    "invented: yes",
    "metal: aluminium",
    "bond: bentonite",
    ...head,
    "batches:",
    ...lines,
  ];
  return readLog(`${text.join("\n")}\n`, { name: "log.yaml" }).value!;
}

/** Sand and clay of about 7.5 % of dry mix, and water in kg. */
export const madeOf = (water: string): string =>
  `made of: { sand: 5.00 kg ± 0.01 kg, bentonite: 0.445 kg ± 0.002 kg, bentonite moisture: 9 %, water: ${water} }`;
