// Water for tomorrow from a log: what it takes, what it asks for, which cover it speaks of first.

import { expect, test } from "vitest";
import { type WeatherWater, weatherWater } from "../../lib/finding/weather-water.ts";
import { heapLog } from "../page/heap-weather-log.ts";

const known = (change: { readonly [section: string]: string } = {}): WeatherWater =>
  weatherWater(heapLog(change))!.known!;
const weather = (text: string) => ({ weather: `{ ${text} }` });
const whole = "air: 18 °C, humidity: 60 %, hours: 16 h, start: 3.8 %, want: 3.5 %";

test("three covers, none first; the drier end of an open heap, the wanted moisture in reach", () => {
  const { each, own, start, want, hours } = known();
  expect(each.map(({ cover }) => cover)).toEqual(["none", "sheet", "lid"]);
  expect([own, start, want, hours]).toEqual(["none", 3.8, 3.5, 16]);
  const [open, sheet] = each;
  expect(open!.after!.high).toBeLessThan(3.8);
  expect(open!.after!.low).toBeGreaterThan(2);
  // The trade's round figure of 3.8 % for 3.5 % lies in the range.
  expect(open!.temper!.low < 3.8 && open!.temper!.high > 3.8).toBe(true);
  expect(sheet!.temper!.high).toBeLessThan(3.6);
});

test("the course begins at nothing, grows with the root of time, and ends at the figure", () => {
  const { course, each } = known();
  expect(course[0]!.open.high).toBe(0);
  expect(course.at(-1)!.open.value).toBeCloseTo(each[0]!.lost.figure.value, 10);
  expect(course.at(-1)!.sheet.high).toBeCloseTo(each[1]!.lost.figure.high, 10);
  const half = course.find(({ hours }) => hours === 4)!;
  expect(half.open.value / course.at(-1)!.open.value).toBeCloseTo(0.5, 6);
});

test("what the log does not say is taken and told; what is written replaces it", () => {
  const bare = known({ heap: "{ mass: 120 kg ± 5 kg }", ...weather(whole) });
  expect(bare.taken).toHaveLength(5);
  expect(bare.taken).toContain("no cover");
  const said = known(
    weather(`air: 18 °C ± 1 °C, humidity: 60 % ± 5 %, wind: 1 m/s, hours: 16 h, start: 3.8 %`),
  );
  expect(said.taken).toEqual([]);
  const [narrow, wide] = [said, bare].map(({ each }) => each[0]!.lost.figure.shares);
  const air = "the air's humidity over the hours";
  const share = (shares: typeof narrow) => shares!.find(({ id }) => id === air)!.percent;
  expect(share(narrow)).toBeLessThan(share(wide));
  expect(said.want).toBeUndefined();
  expect(said.each[0]!.temper).toBeUndefined();
});

test("a forecast's wind, at 10 m, is brought down to 2 m, and that is told", () => {
  // FAO-56, example 14: 3.2 m/s at 10 m is 2.4 m/s at 2 m.
  const high = known(weather(`${whole}, wind: 3.2 m/s, wind at: 10 m`));
  expect(high.windMS.toFixed(1)).toBe("2.4");
  expect(high.taken.join()).toContain("0.75 of that at 10 m");
  expect(known(weather(`${whole}, wind: 3.2 m/s`)).windMS).toBe(3.2);
  expect(known(weather(`${whole}, wind: 3.2 m/s, wind at: 0.3 m`)).windMS).toBe(3.2);
});

test("start and wish come from measured and wanted where weather does not say them", () => {
  const other = known({
    ...weather("air: 18 °C, humidity: 60 %, hours: 16 h"),
    wanted: "{ moisture: 3.4 % }",
  });
  expect([other.start, other.want]).toEqual([2.6, 3.4]);
  expect(other.atLeast).toBe(true);
  expect(known().atLeast).toBe(false);
});

test("a surface or a depth as measured takes the place of the form", () => {
  const tray = known({ heap: "{ mass: 120 kg ± 5 kg, exposed: 3 m², cover: sheet }" });
  expect(tray.each[0]!.lost.areaM2).toBe(3);
  expect(tray.own).toBe("sheet");
  const bin = known({ heap: "{ mass: 110 kg ± 5 kg, shape: bin, depth: 200 mm }" });
  expect(bin.each[0]!.lost.areaM2).toBeCloseTo(0.5, 6);
});

test("no figure without mass, weather, hours or moisture, in frost, or over ten days", () => {
  expect(weatherWater(heapLog({ weather: "" }))).toBeUndefined();
  const missing = (change: { readonly [section: string]: string }) => weatherWater(heapLog(change))!.missing!;
  expect(missing({ heap: "{ shape: bin }" })[0]).toMatch(/mass of the heap/);
  expect(missing({ ...weather("wind: 1 m/s"), measured: "[]" })).toHaveLength(4);
  expect(missing(weather(whole.replace("18", "-4")))[0]).toMatch(/freezing/);
  expect(missing(weather(whole.replace("16 h", "300 h")))[0]).toMatch(/ten days/);
  expect(missing(weather(`${whole}, wind: 15 m/s`))[0]).toMatch(/10 m\/s/);
});

test("sand that is hotter than the air is told apart", () => {
  expect(known(weather(`${whole}, sand: 45 °C`)).hotSand).toBe(true);
  expect(known(weather(`${whole}, sand: 22 °C`)).hotSand).toBe(false);
});
