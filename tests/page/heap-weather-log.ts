// An invented heap and its weather, for the pages about water and heat; no real person or place is meant.

import { hasError } from "../../lib/issue.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { Log } from "../../lib/log/types.ts";

const whole: { readonly [section: string]: string } = {
  metal: "aluminium",
  heap: "{ mass: 120 kg ± 5 kg, clay kind: sodium bentonite, shape: heap, cover: none }",
  measured: "[{ date: 2026-05-09, moisture: 2.6 %, live clay: 6.8 % of dry mix ± 0.5 % }]",
  weather: "{ air: 18 °C, humidity: 60 %, wind: 0.5 m/s, hours: 16 h, start: 3.8 % ± 0.1 %, want: 3.5 % }",
  flask: "{ volume: 14 L, casting volume: 0.9 L }",
  events: `
  - { date: 2026-05-02, pour: { metal: 2.4 kg, at: 720 °C, section: 8 mm } }
  - { date: 2026-05-16, pour: { metal: 3.1 kg, at: 730 °C, section: 14 mm } }`,
  planned: "{ pours: 30, metal: 2.5 kg, section: 5 mm, every: 7 days }",
};

/** The log with some sections written otherwise; "" leaves one out. */
export function heapLog(change: { readonly [section: string]: string } = {}): Log {
  const lines = Object.entries({ ...whole, ...change }).flatMap(([key, value]) =>
    value === "" ? [] : [`${key}: ${value}`],
  );
  const read = readLog(["format: 1", "invented: true", ...lines, ""].join("\n"), { name: "heap.yaml" });
  if (!read.value || hasError(read.issues)) throw new Error(JSON.stringify(read.issues));
  return read.value;
}
