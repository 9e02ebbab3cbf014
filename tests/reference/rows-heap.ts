// The heap, the muller, faults, units and slips of the pen.

import { swappedDigits } from "../../lib/log/swapped-digits.ts";
import { unitNamed } from "../../lib/quantity/read-unit.ts";
import { convert } from "../../lib/quantity/unit.ts";
import { type CastingFault, castingFaultRows } from "../../lib/sand/casting-faults.ts";
import { clayAfterCyclesKg, heapSteadyState } from "../../lib/sand/heap-steady-state.ts";
import { sandHeat } from "../../lib/sand/hot-sand.ts";
import { carriedRoundRpm, panRpm } from "../../lib/sand/muller-arithmetic.ts";
import type { Published } from "./published.ts";

/** Which side of which test of the sand was read to go with a fault. */
const sides = (fault: CastingFault): string =>
  castingFaultRows[fault].sand
    .flatMap(({ test, tag }) => (test && tag === "read" ? [`${test.property} ${test.side}`] : []))
    .join(", ");
const fresh = { sandKg: 92, finesKg: 0, liveClayKg: 8, deadClayKg: 0, otherKg: 0, waterKg: 0 };
const cycle = { burntPercent: 2, lostPercent: 5, clayKg: 0.552, clayLivePercent: 100, newSandKg: 4.448 };
const steady = () => heapSteadyState({ dryKg: 100, liveClayKg: 8, burntPercent: 2, lostPercent: 5 });
const factors = [["in", "m", "2.54e-2"], ["ft", "m", "3.048e-1"], ["lb", "kg", "4.535924e-1"], ["oz", "kg", "2.834952e-2"], ["kgf", "N", "9.80665"], ["lbf", "N", "4.448222"], ["psi", "Pa", "6.894757e3"], ["kgf/cm²", "Pa", "9.80665e4"], ["inH2O", "Pa", "2.490889e2"], ["US gal", "m³", "3.785412e-3"], ["US quart", "m³", "9.463529e-4"], ["US pint", "m³", "4.731765e-4"], ["US cup", "m³", "2.365882e-4"], ["US fl oz", "m³", "2.957353e-5"], ["imp gal", "m³", "4.54609e-3"], ["imp fl oz", "m³", "2.841306e-5"], ["ft³", "m³", "2.831685e-2"], ["in³", "m³", "1.638706e-5"], ["lb/ft³", "kg/m³", "1.601846e1"]] as const; // biome-ignore format: as the table runs

export const heapRows: readonly Published[] = [
  {
    figure: "dead clay of a heap after 1, 2, 5, 10, 20, 50, 100 cycles, kg",
    theirs: ["0.1520", "0.2964", "0.6877", "1.2198", "1.9502", "2.8061", "3.0220"],
    ours: () => [1, 2, 5, 10, 20, 50, 100].map((n) => clayAfterCyclesKg(fresh, cycle, n).deadClayKg),
    tag: "derived",
    note: "mass balance: 8 of 100 kg, 2 % burnt, 5 % lost a cycle",
  },
  {
    figure: "clay and new sand that hold it, and the dead clay in the end, kg",
    theirs: ["0.5520", "4.4480", "3.0400"],
    ours: () => {
      const { clayKg, newSandKg, deadClayKg } = steady();
      return [clayKg, newSandKg, deadClayKg!];
    },
    tag: "derived",
  },
  {
    figure: "turns of a muller's pan, 1,450 rpm through 60 : 1, a minute",
    theirs: ["24"],
    ours: () => [panRpm({ motorRpm: 1450, reduction: 60 })],
    tag: "common practice",
  },
  {
    figure: "sand carried round in a drum: 42.3/√D",
    source: "ball mills",
    theirs: ["42.3", "42.3", "42.3"],
    ours: () =>
      [200, 300, 600].map((diameterMm) => carriedRoundRpm({ diameterMm }) * Math.sqrt(diameterMm / 1000)),
    tag: "from memory",
  },
  {
    figure: "hot sand: just above 120 °F, just below and above 160 °F",
    source: ["aklinski", "strobl"],
    theirs: ["hot", "hot", "too hot to mull"],
    ours: () => [121, 159, 161].map((fahrenheit) => sandHeat((fahrenheit - 32) / 1.8)),
    tag: "read",
  },
  {
    figure: "factors of 19 units",
    source: "sp 811",
    theirs: factors.map(([, , factor]) => factor),
    ours: () => factors.map(([from, to]) => convert(1, unitNamed(from)!, unitNamed(to)!)),
    tag: "read",
    note: "as copied in a public source file",
  },
  {
    figure: "side of the sand that goes with gas holes, penetration, rough skin, scabs, swells, drops",
    source: ["ring", "modern casting", "honeyman"],
    theirs: [
      "permeability low, compactability high",
      "permeability high, compactability low",
      "permeability high, compactability high",
      "compactability high, permeability low",
      "compactability high",
      "compactability low",
    ],
    ours: () => (["gas holes", "penetration", "rough skin", "scabs", "swells", "drops"] as const).map(sides),
    tag: "read",
    note: "our words for theirs",
  },
  {
    figure: "a sample mass with its digits transposed, 1406 g: what it should read",
    source: "french sheet",
    theirs: ["1406"],
    ours: () => {
      const cumulative = [56, 118, 180, 197, 288, 498, 657, 666, 908, 1343, 1404, 1422, 1423];
      const held = [...cumulative.map((mass, k) => mass - (cumulative[k - 1] ?? 0)), 1460 - 1423];
      const swaps = swappedDigits(
        [
          { text: "1406", value: 1406, sign: -1 },
          ...held.map((value) => ({ text: String(value), value, sign: 1 as const })),
        ],
        1,
      );
      return swaps.filter(({ typed }) => typed === "1406").map(({ swapped }) => Number(swapped));
    },
    agree: { instead: ["1460"] },
    tag: "misprint",
    note: "its printed percents fit 1460 g",
  },
];
