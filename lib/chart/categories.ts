// One order for the sieves of several sands: coarse to fine, the pan last.

export interface Category {
  readonly label: string;
  /** mm; 0 for the pan; undefined: not known. */
  readonly openingMm?: number;
}

/** Labels that occur, each once: by opening where every one is known, else in the order in which each sand names them. */
export function mergeCategories(lists: readonly (readonly Category[])[]): string[] {
  const byLabel = new Map<string, Category>();
  for (const each of lists.flat()) if (!byLabel.has(each.label)) byLabel.set(each.label, each);
  const opening = (each: Category) => (each.label === "pan" ? 0 : each.openingMm);
  const all = [...byLabel.values()];
  if (all.every((each) => opening(each) !== undefined))
    return all.sort((a, b) => opening(b)! - opening(a)!).map((each) => each.label);
  const merged: string[] = [];
  for (const list of lists) {
    let place = 0;
    for (const { label } of list) {
      const found = merged.indexOf(label);
      if (found < 0) merged.splice(place, 0, label);
      place = (found < 0 ? place : found) + 1;
    }
  }
  return merged.filter((label) => label !== "pan").concat(merged.includes("pan") ? ["pan"] : []);
}
