import fc from "fast-check";
import { expect, test } from "vitest";
import { type Cell, type SheetSpec, sheet } from "../../lib/index.ts";
import { orderByNeed } from "../../lib/sheet/order.ts";

const scales = [{ name: "kitchen scale", stepG: 0.1, withinG: 0.5 }];
const figureOf = (cell: Cell | undefined) => {
  if (cell?.kind !== "figure") throw new Error(`no figure: ${JSON.stringify(cell)}`);
  return cell;
};
/** Tenths of a gram from 1 to 300 g, as a scale shows them. */
const grams = fc.integer({ min: 10, max: 3000 }).map((tenths) => tenths / 10);
const rowsOf = fc.uniqueArray(
  fc.record({ bag: fc.stringMatching(/^[A-Z][a-z]{2,8}$/), wet: grams, dry: grams }),
  {
    selector: ({ bag }) => bag,
    minLength: 2,
    maxLength: 6,
  },
);
const columns = {
  bag: "text",
  wet: { unit: "g", scale: "kitchen scale" },
  dry: { unit: "g", scale: "kitchen scale" },
  lost: "= wet - dry",
  percent: "= 100 * lost / wet",
  share: "= wet / sum(wet)",
  larger: "= max(wet, dry)",
} as const;
const foot = {
  total: "sum(wet)",
  spread: "sd(wet)",
  middle: "median(percent)",
  share: "100 * sum(dry) / sum(wet)",
};

test("x − x is 0 ± 0, straight or drawn, within a row and over the rows", () => {
  fc.assert(
    fc.property(rowsOf, (rows) => {
      const more = { nought: "= percent - percent", none: "= max(wet, dry) - larger" };
      const made = sheet(
        { columns: { ...columns, ...more }, rows, foot: { nothing: "sum(wet) - sum(wet)" } },
        { scales },
      );
      const cells = rows.flatMap((_, row) => [made.cell(row, "nought"), made.cell(row, "none")]);
      for (const cell of [...cells, made.foot[0]?.cell]) {
        const { low, high, sd } = figureOf(cell).figure;
        expect([low, high, sd]).toEqual([0, 0, 0]);
      }
    }),
    { numRuns: 15, seed: 1 },
  );
});

/** Ends of every figure, by row and column, or foot. */
function ends(spec: SheetSpec): Map<string, readonly number[]> {
  const made = sheet(spec, { scales });
  const all = new Map<string, readonly number[]>();
  const keep = (name: string, cell: Cell): void => {
    if (cell.kind === "figure") all.set(name, [cell.value, cell.figure.low, cell.figure.high]);
  };
  for (let row = 0; row < made.rowCount; row++) {
    for (const { name } of made.columns)
      keep(`${made.column("bag").texts[row]}, ${name}`, made.cell(row, name));
  }
  for (const { name, cell } of made.foot) keep(name, cell);
  return all;
}

test("the order of rows, of columns and of reading changes nothing", () => {
  fc.assert(
    fc.property(rowsOf, (rows) => {
      const one = ends({ columns, rows, foot });
      const turned = Object.fromEntries(Object.entries(columns).reverse());
      const other = ends({
        columns: turned,
        rows: [...rows].reverse(),
        foot: Object.fromEntries(Object.entries(foot).reverse()),
      });
      expect([...other.keys()].sort()).toEqual([...one.keys()].sort());
      for (const [name, figures] of one) {
        // Sums add up in another order: the last of sixteen digits may differ.
        other.get(name)?.forEach((end, k) => {
          expect(Math.abs(end - figures[k]!), name).toBeLessThanOrEqual(2e-9 * Math.max(1e-3, Math.abs(end)));
        });
      }
    }),
    { numRuns: 15, seed: 2 },
  );
});

test("the same loads in lb and kg, in and mm, psi and kPa give the same physical result", () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 400 }), fc.integer({ min: 10, max: 60 }), (tenths, wide) => {
      const formula = "load * 9.80665 m / 1 s^2 / (3.141592653589793 * bore^2 / 4)";
      const metric = {
        load: `${(tenths / 10) * 0.45359237} ± ${0.1 * 0.45359237} kg`,
        bore: `${wide * 2.54} ± 0.254 mm`,
      };
      const custom = { load: `${tenths / 10} ± 0.1 lb`, bore: `${wide / 10} ± 0.01 in` };
      const of = (row: object, units: readonly string[], wants: string) =>
        figureOf(
          sheet({
            columns: { load: units[0]!, bore: units[1]!, strength: { unit: wants, formula } },
            rows: [row as Record<string, string>],
          }).cell(0, "strength"),
        );
      const kPa = of(metric, ["kg", "mm"], "kPa");
      for (const units of [
        ["kg", "mm"],
        ["lb", "in"],
        ["g", "cm"],
      ]) {
        const psi = of(custom, units, "psi");
        const turned = [psi.value, psi.figure.low, psi.figure.high].map((value) => value * 6.894757293168361);
        const plain = [kPa.value, kPa.figure.low, kPa.figure.high];
        turned.forEach((value, k) => {
          expect(Math.abs(value / plain[k]! - 1)).toBeLessThan(1e-8);
        });
      }
    }),
    { numRuns: 20, seed: 3 },
  );
});

const graphs = fc
  .integer({ min: 1, max: 9 })
  .chain((n) =>
    fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 14 }).map((edges) => ({ n, edges })),
  );

/** By plain search: which nodes reach which. */
function reaching(n: number, edges: readonly (readonly [number, number])[]): boolean[][] {
  const reach = Array.from({ length: n }, () => new Array<boolean>(n).fill(false));
  for (const [from, to] of edges) reach[from]![to] = true;
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) reach[i]![j] ||= reach[i]![k]! && reach[k]![j]!;
  }
  return reach;
}

test("of random needs exactly the members of circles and what needs them are faulty", () => {
  fc.assert(
    fc.property(graphs, ({ n, edges }) => {
      const reach = reaching(n, edges);
      const name = (k: number): string => `c${String.fromCharCode(97 + k)}`;
      const needs = Array.from({ length: n }, (_, k) =>
        edges.filter(([from]) => from === k).map(([, to]) => to),
      );
      const made = sheet({
        columns: Object.fromEntries(
          needs.map((list, k) => [name(k), `= 1 ${list.map((to) => ` + ${name(to)}`).join("")}`]),
        ),
        rows: [{}],
      });
      for (let k = 0; k < n; k++) {
        const isFaulty = reach[k]!.some((reached, m) => (reached || m === k) && reach[m]![m]);
        expect(made.cell(0, name(k)).kind, name(k)).toBe(isFaulty ? "fault" : "figure");
      }
    }),
    { numRuns: 100, seed: 4 },
  );
});

test("a walk through a circle follows the needs, and the order puts needs first", () => {
  fc.assert(
    fc.property(graphs, ({ n, edges }) => {
      const needs = new Map(
        Array.from({ length: n }, (_, k) => [
          `${k}`,
          edges.filter(([from]) => from === k).map(([, to]) => `${to}`),
        ]),
      );
      const { order, circles } = orderByNeed(needs);
      for (const { walk } of circles) {
        walk.forEach((member, k) => {
          expect(needs.get(member)).toContain(walk[(k + 1) % walk.length]);
        });
      }
      const members = new Set(circles.flatMap((circle) => circle.members));
      expect(order.length + members.size).toBe(n);
      order.forEach((member, k) => {
        for (const need of needs.get(member)!)
          if (!members.has(need)) expect(order.indexOf(need)).toBeLessThan(k);
      });
    }),
    { numRuns: 200, seed: 5 },
  );
});

test("a chain of 300 columns is worked out, and one of 3,000 in a circle is found", () => {
  const chain = Object.fromEntries(
    Array.from({ length: 300 }, (_, k) => [`c${k}`, k === 0 ? { plusMinus: "0.1" } : `= c${k - 1} + 0.001`]),
  );
  const { value, figure } = figureOf(sheet({ columns: chain, rows: [{ c0: 5 }] }).cell(0, "c299"));
  expect(value).toBeCloseTo(5.299, 9);
  expect(figure.high).toBeCloseTo(5.299 + 0.095, 9);
  const ring = new Map(Array.from({ length: 3000 }, (_, k) => [`${k}`, [`${(k + 1) % 3000}`]]));
  expect(orderByNeed(ring).circles[0]?.members).toHaveLength(3000);
});
