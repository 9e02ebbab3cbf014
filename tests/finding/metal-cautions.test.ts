import { expect, test } from "vitest";
import { metalCautions } from "../../lib/finding/metal-cautions.ts";
import type { Log } from "../../lib/log/types.ts";

type Event = Log["events"][number];
const pour = (alloy: string) => ({ kind: "pour", date: "2026-05-02", alloy }) as Event;
const codes = (metal: string | undefined, ...events: Event[]) =>
  metalCautions({ ...(metal ? { metal } : {}), events }).map(({ code }) => code);

test("a metal that fumes or burns brings up its caution, whether the log or a pour names it; aluminium brings up none", () => {
  expect(codes("aluminium", pour("Al-Si 12"))).toEqual([]);
  expect(codes(undefined)).toEqual([]);
  expect(codes("brass and bronze")).toEqual(["caution/zinc-fume"]);
  expect(codes("aluminium", pour("scrap brass"))).toEqual(["caution/zinc-fume"]);
  expect(codes("aluminium", pour("Magnesium scrap"), pour("zinc"))).toEqual([
    "caution/magnesium-fire",
    "caution/zinc-fume",
  ]);
});
