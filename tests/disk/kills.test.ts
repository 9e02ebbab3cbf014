// A program that saves is killed: log and CSV file are whole, old or new. KILLS=1000 for a long run.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { saveLog } from "../../lib/disk/save.ts";
import { seeded } from "../seeded.ts";
import { ended, programOf, start } from "./save-program.ts";
import { folderWith, namesIn, textsIn, version } from "./saving.ts";

const kills = Number(process.env.KILLS ?? 20);
let saveOn: string;
let cutOff: string;

beforeAll(async () => {
  saveOn = await programOf("save-on.ts");
  cutOff = await programOf("save-cut-off.ts");
});

/** Which version a text is; a text that is none, or is cut, fails. */
function versionOf(folder: string, name: string): number {
  const text = readFileSync(join(folder, name), "utf8");
  const n = Number(/version[ ,](\d+)/.exec(text)?.[1]);
  if (text !== version(n).find((one) => name.startsWith(one.name))!.text)
    throw new Error(`${name} is not whole: ${text.length} characters that begin as version ${n}`);
  return n;
}

function leftIn(folder: string): string[] {
  return namesIn(folder).filter((name) => !/^(bags\.csv|log\.yaml)(\.before)?$/.test(name));
}

test("killed before and after every step of a save", async () => {
  const states = new Set<string>();
  for (const step of ["writeFileSync", "fsyncSync", "renameSync"]) {
    for (const when of ["before", "after"]) {
      for (let nth = 1; ; nth++) {
        const folder = folderWith(version(1));
        const said = await ended(start(cutOff, folder, step, nth, when));
        const [log, rows] = [versionOf(folder, "log.yaml"), versionOf(folder, "bags.csv")];
        // CSV files are renamed first, the log last.
        expect(rows).toBeGreaterThanOrEqual(log);
        if (said === "saved") {
          expect({ nth, log, rows }).toMatchObject({ log: 2, rows: 2 });
          expect(nth).toBeGreaterThan(4);
          break;
        }
        expect(said).toBe("");
        states.add(`log ${log}, rows ${rows}`);
        // The next save goes on from what is there and sweeps what was left.
        const next = saveLog(join(folder, "log.yaml"), { base: textsIn(folder), texts: version(3) });
        expect(next.kind).toBe("saved");
        expect([versionOf(folder, "log.yaml.before"), versionOf(folder, "bags.csv.before")]).toEqual([
          log,
          rows,
        ]);
        expect(leftIn(folder)).toEqual([]);
      }
    }
  }
  expect([...states].sort()).toEqual(["log 1, rows 1", "log 1, rows 2", "log 2, rows 2"]);
}, 120_000);

test(
  `${kills} kills at random moments of saving`,
  async () => {
    const random = seeded(20260714);
    const folder = folderWith(version(0));
    const seen = { saves: 0, between: 0, cutOff: 0 };
    let last = 0;
    for (let kill = 0; kill < kills; kill++) {
      const child = start(saveOn, folder);
      const said = ended(child);
      const afterMs = random.uniform(0, 200);
      child.stdout?.once("data", () => setTimeout(() => child.kill("SIGKILL"), afterMs));
      expect(await said).toBe("saving\n");
      const [log, rows] = [versionOf(folder, "log.yaml"), versionOf(folder, "bags.csv")];
      expect([log, log + 1]).toContain(rows);
      expect(log).toBeGreaterThan(last);
      for (const name of ["log.yaml", "bags.csv"]) {
        const now = name === "log.yaml" ? log : rows;
        expect([now - 1, now]).toContain(versionOf(folder, `${name}.before`));
      }
      const left = leftIn(folder);
      expect(left.filter((name) => !name.startsWith(".mullbook-sav"))).toEqual([]);
      // One save's at most: four texts and the lock.
      expect(left.length).toBeLessThanOrEqual(5);
      seen.saves += log - last;
      seen.between += rows - log;
      seen.cutOff += left.length > 0 ? 1 : 0;
      last = log;
    }
    console.log(
      `${kills} kills in ${seen.saves} saves: every file whole; ${seen.cutOff} cut a save off, ${seen.between} of them between CSV file and log`,
    );
  },
  60_000 + kills * 3000,
);
