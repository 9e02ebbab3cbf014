// A load tested as it is mulled, by two ways: how long to 90 and 95 % of full bond.

import { mullingReport } from "../../lib/finding/mulling-report.ts";
import type { Seeded } from "../seeded.ts";
import type { Ledger } from "./ledger.ts";
import { head, logOf } from "./read.ts";

const notebook = "mulling trial";

export function mullingOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const ways = ["by hand", "barrel muller"].map((name, k) => {
    const tau = k === 0 ? random.uniform(4, 10) : random.uniform(1.5, 4);
    const full = random.uniform(55, 90);
    const start = full * random.uniform(0.25, 0.6);
    const scatter = full * random.uniform(0.03, 0.07);
    const last = random.uniform(2.2, 4) * tau;
    const count = random.integer(4, 8);
    const minutes = [
      ...new Set(
        Array.from({ length: count }, (_, i) => Math.max(1, Math.round(last * ((i + 1) / count) ** 1.5))),
      ),
    ];
    const readings = minutes.map((t) => {
      const kPa = full - (full - start) * Math.exp(-t / tau) + scatter * random.normal();
      return `      - { minutes: ${t}, green compression: ${Math.max(5, kPa).toFixed(0)} kPa }`;
    });
    return {
      name,
      tau,
      full,
      start,
      text: `  ${name}:\n    load: 5 kg\n    readings:\n${readings.join("\n")}\n`,
    };
  });
  const log = logOf(`${head("Mulling")}mulling:\n${ways.map(({ text }) => text).join("")}`);
  const report = mullingReport(log);
  report.ways.forEach(({ fullBond, times }, k) => {
    const { full, start, tau } = ways[k]!;
    const put = (figure: string, ends: { low: number; high: number } | undefined, truth: number): void =>
      note({ founder, notebook, figure, ends: ends && { ...ends, atLeast: false }, truth });
    put("full bond", fullBond, full);
    for (const time of times)
      put(`minutes to ${time.sharePercent} %`, time, minutesTo({ full, start, tau }, time.sharePercent));
  });
  for (const { slower, quicker, sharePercent, times } of report.comparisons) {
    const [long, short] = [slower, quicker].map((name) =>
      minutesTo(ways.find((way) => way.name === name)!, sharePercent),
    );
    const ends = { low: times.low, high: times.high, atLeast: false };
    note({ founder, notebook, figure: "one way's minutes over another's", ends, truth: long! / short! });
  }
}

/** Sand that was that far along when mulling began needs no time at all. */
function minutesTo(
  { start, full, tau }: { start: number; full: number; tau: number },
  sharePercent: number,
): number {
  return Math.max(0, -tau * Math.log(((1 - sharePercent / 100) * full) / (full - start)));
}
