// The moisture trial by number of batches and kind of truth, one ill at a time, and what a parabola cannot see.

import { percent, type Tally, type Tried, together, tryFounders, tryProperty } from "../trial/coverage.ts";
import { allIlls, type Ills } from "../trial/founders.ts";
import { truthKinds } from "../trial/founders-truths.ts";

/** So many founders a cell. */
export function fineTables(founders: number, draws: number): void {
  /** Fresh founders for every cell; none of them is among those of the tests. */
  let used = 100_000;
  function fresh(how: Omit<Tried, "first" | "draws" | "founders">, times = 1): Tally {
    const tally = tryFounders({ ...how, founders: times * founders, draws, first: used });
    used += times * founders;
    return tally;
  }
  const counts = [5, 7, 9, 12];

  const heads = [
    "curve",
    "true curve",
    "new batch",
    "other day",
    "aim",
    "aim printed",
    "dose",
    "not too much",
  ];
  console.log(
    `${founders} founders a cell, ${draws} draws; shares in %. Chance: promised, kept (batches).\n`,
  );

  function line(label: string, tally: Tally): void {
    const { curve, trueCurve, newBatch, otherDay, aim, printedAim, dose, notTooMuch, chance, aimWidths } =
      tally;
    const shares = [curve, trueCurve, newBatch, otherDay, aim, printedAim, dose, notTooMuch];
    const cells = shares.map((share) => (share[1] > 0 ? percent(share).toFixed(1) : "none"));
    const middle = [...aimWidths].sort((a, b) => a - b)[aimWidths.length >> 1];
    const part = (of: number): string => ((100 * of) / chance.asked).toFixed(1);
    const kept =
      chance.asked > 0 ? `${part(chance.promised)}, ${part(chance.kept)} (${chance.asked})` : "none";
    console.log(`| ${[label, ...cells, kept, middle?.toFixed(2) ?? "none"].join(" | ")} |`);
  }

  function table(title: string): void {
    console.log(`\n| ${[title, ...heads, "chance", "aim's width"].join(" | ")} |`);
    console.log(`|---${"|---:".repeat(heads.length + 2)}|`);
  }

  table("truth, batches");
  const cells = truthKinds.flatMap((kind) =>
    counts.map((batches) => {
      const tally = fresh({ batches, kind, ills: allIlls, drawn: true });
      line(`${kind}, ${batches}`, tally);
      return { kind, batches, tally };
    }),
  );
  for (const kind of truthKinds)
    line(`${kind}, all`, together(cells.filter((cell) => cell.kind === kind).map(({ tally }) => tally)));
  for (const batches of counts)
    line(
      `any, ${batches}`,
      together(cells.filter((cell) => cell.batches === batches).map(({ tally }) => tally)),
    );
  line("all", together(cells.map(({ tally }) => tally)));

  table("one ill at a time: parabola, 9 batches");
  const one: readonly (readonly [string, Ills])[] = [
    ["none", {}],
    ...(Object.keys(allIlls) as (keyof Ills)[]).map((ill) => [ill, { [ill]: true }] as const),
  ];
  for (const [label, ills] of one) line(label, fresh({ batches: 9, ills, drawn: true }));

  table("four batches: curves only");
  for (const kind of truthKinds) line(kind, fresh({ batches: 4, kind, ills: allIlls, drawn: false }, 4));

  // The test whose truth is bent otherwise, by itself: what a parabola through the batches cannot see.
  const bent = { parabola: 1, lopsided: 1, plateau: 1, tent: 2 } as const;
  const more = [5, 7, 9, 12, 20];
  console.log(
    `\n| the bent property's curve, batches | ${more.join(" | ")} |\n|---${"|---:".repeat(more.length)}|`,
  );
  for (const kind of truthKinds) {
    const shares = more.map((batches) => {
      used += 8 * founders;
      const how = { batches, kind, ills: allIlls, drawn: false, founders: 8 * founders, first: used };
      return percent(tryProperty(bent[kind], how)).toFixed(1);
    });
    console.log(`| ${kind} | ${shares.join(" | ")} |`);
  }
}
