// The metals and the bonds that bands are known for.

export const metalNames = Object.freeze([
  "aluminium",
  "brass and bronze",
  "copper-nickel",
  "grey iron",
  "malleable iron",
  "steel",
] as const);
export type Metal = (typeof metalNames)[number];

/** What holds the grains: bentonite added to washed sand, or the clay that a natural sand came with. */
export const bondNames = Object.freeze(["bentonite", "natural"] as const);
export type Bond = (typeof bondNames)[number];

const otherNames: Readonly<Record<string, Metal>> = {
  aluminum: "aluminium",
  brass: "brass and bronze",
  bronze: "brass and bronze",
  cupronickel: "copper-nickel",
  "copper nickel": "copper-nickel",
  "gray iron": "grey iron",
  "cast iron": "grey iron",
};

/**
 * The metal of that name, capitals and the other usual names apart; undefined where no bands are known for it
 * ("iron" alone does not say which).
 *
 *     metalNamed("Bronze")   // "brass and bronze"
 */
export function metalNamed(text: string): Metal | undefined {
  const name = text.trim().toLowerCase();
  return (
    metalNames.find((metal) => metal === name) ??
    (Object.hasOwn(otherNames, name) ? otherNames[name] : undefined)
  );
}
