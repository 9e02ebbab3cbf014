// What to do next with sieved sands, the most needed first; each step names its hazard where it has one.

import type { Finding } from "./finding.ts";
import { worthBuying } from "./sand-findings.ts";
import type { SandReport } from "./sand-report.ts";

/**
 * Steps as sentences. broken: errors of the log keep a sieving from being worked out.
 * @example grainNextSteps(sandReports(log), [])
 */
export function grainNextSteps(
  reports: readonly SandReport[],
  findings: readonly Finding[],
  broken = false,
): readonly string[] {
  const has = (code: string): boolean => findings.some((finding) => finding.code === code);
  const steps: string[] = [];
  if (broken)
    steps.push(
      "Do what the lines under what went wrong ask for, in the log or at the bench, and write the page again.",
    );
  if (has("grain/crowded"))
    steps.push(
      "Dust: lid on. Sieve a smaller portion, or the same one in parts, so that no sieve is crowded.",
    );
  for (const { sand, trusted } of reports) {
    if (!trusted && !sand.stateSaid)
      steps.push(`If ${sand.name} is as you bought it, write \`state: new\` under its name in the log.`);
  }
  if (has("grain/unwashed")) {
    const surely = reports.some(({ trusted, sand }) => !trusted && sand.stateSaid);
    steps.push(
      `Hot, spitting sand: ${surely ? "" : "if it is not, "}wash the clay out of a portion, dry it gently, sieve it again, and write \`washed: yes\`.`,
    );
  }
  for (const { because, said = [] } of findings.filter(({ code }) => code === "grain/cannot-estimate")) {
    const help = because.at(-1);
    if (help) steps.push(`${said[0]}: ${help}`);
  }
  if (has("grain/mass-lost"))
    steps.push("Dust: look where sand escapes, and sieve again with a lid and a brush.");
  if (has("grain/mass-gained"))
    steps.push("Check the tare, dry the sand, and brush the sieves out before the next portion.");
  if (has("grain/weighing-unknown"))
    steps.push("Declare the scale in the log: its name, and what it reads to.");
  if (has("grain/scale-unchecked"))
    steps.push(
      "Weigh a known weight on the scale, and write how far it is off at most beside what it reads to: `within: 0.2 g`.",
    );
  for (const report of reports) {
    const weighings = report.trusted && report.printed ? byWeighing(report) : undefined;
    if (weighings) steps.push(weighings);
    if (worthBuying(report))
      steps.push(`If you buy one sieve for ${report.sand.name}, buy ${report.nextSieves[0]!.label}.`);
  }
  // Fresh grabs from each bag are second portions as well.
  const grabs = has("compare/apart-but-unrepeated");
  if (grabs) steps.push("Dust: lid on. Sieve two fresh grabs from each bag on the same set.");
  if (has("grain/unrepeated") && !grabs) {
    steps.push(
      "Dust: lid on. Sieve a second portion, riffled or coned and quartered from the same sample, or better a fresh grab from the bag.",
    );
  } else if (has("grain/grabs-unknown") && !grabs) {
    steps.push(
      "Dust: lid on. Sieve a fresh grab from another place in the bag, and write `repeat of: grab`.",
    );
  }
  if (has("compare/another"))
    steps.push(
      "Treat them as two sands: make a small batch of each at the water of the old one, and compare squeeze and skin.",
    );
  if (has("compare/not-told-apart"))
    steps.push(
      "They can go into one heap as far as fineness goes; look at the curves and at a test batch first.",
    );
  if (deciding(findings))
    steps.push(
      "Judge the sand by its skins and its gas holes before you change it, and blend in small trials.",
    );
  if (steps.length === 0 && reports.length > 0)
    steps.push("Nothing here asks for another sieving. A moisture trial with this sand comes next.");
  return [...new Set(steps)];
}

/** Where the weighings together carry two fifths of the doubt, a finer scale is what helps. */
function byWeighing({ sand, fineness: { figure } }: SandReport): string | undefined {
  const weighings = figure.shares.filter(({ source }) => source.kind === "reading");
  const percent = weighings.reduce((sum, share) => sum + share.percent, 0);
  const [most] = weighings;
  if (percent < 40 || !most) return undefined;
  return `Weigh again on a finer scale, or sieve more in parts: the weighings carry ${percent.toFixed(0)} % of the doubt about ${sand.name}, ${most.source.says ?? "one of them"} most.`;
}

/** Only a range that may decide sends a founder to another sand. */
function deciding(findings: readonly Finding[]): boolean {
  return findings.some(({ code, tone }) => code === "grain/outside-band" && tone === "doubt");
}
