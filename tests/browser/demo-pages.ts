// Every demo page: each notebook with the invented logs in the folder of its name.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { filesNamedIn, type Log, type Notebook, type Page, writeHtml } from "../../lib/index.ts";
import { demoRun } from "./demo-run.ts";

const root = join(import.meta.dirname, "..", "..");

export interface DemoLog {
  readonly notebook: string;
  readonly name: string;
  readonly text: string;
  /** CSV files that the log names, by name. */
  readonly files: Readonly<Record<string, string>>;
}

export interface DemoPage {
  /** "grain-fineness, two-bags.yaml" */
  readonly name: string;
  readonly html: string;
}

export function demoLogs(): DemoLog[] {
  return notebookNames().flatMap((notebook) => {
    const folder = join(root, "data-demo", notebook);
    if (!existsSync(folder)) return [];
    const logs = readdirSync(folder).filter((file) => file.endsWith(".yaml"));
    return logs.sort().map((name) => {
      const text = readFileSync(join(folder, name), "utf8");
      const named = filesNamedIn(text).map((file) => [file, readFileSync(join(folder, file), "utf8")]);
      return { notebook, name, text, files: Object.fromEntries(named) };
    });
  });
}

/** Notebooks that differ in what they show and take less than a second. */
const QUICK = ["castings", "grain-fineness", "guide", "moisture-trial", "mulling-trial", "recipe"];

/** For what works pages out again and again: a log of each of the quick notebooks; all logs of all where DEMOS=all. */
export function demoLogsToRepeat(): DemoLog[] {
  const logs = demoLogs();
  if (process.env.DEMOS === "all") return logs;
  return logs.filter(({ notebook }, i) => notebook !== logs[i - 1]?.notebook && QUICK.includes(notebook));
}

/** As the command line writes them. */
export async function demoPages(): Promise<DemoPage[]> {
  const { folder } = await demoRun();
  return demoLogs().map(({ notebook, name }) => {
    const file = `${name.replace(".yaml", "")}-${notebook}.html`;
    return { name: `${notebook}, ${name}`, html: readFileSync(join(folder, file), "utf8") };
  });
}

/** How many figures it has; a recipe's page is all tables. */
export function chartsOf({ html }: DemoPage): number {
  return html.split("<figure").length - 1;
}

/** A log's page as the command line writes it: the log's issues first. */
export async function written(
  notebook: string,
  log: Log,
  issues: Page["issues"],
): Promise<{ readonly page: Page; readonly html: string }> {
  const path = pathToFileURL(join(root, "notebooks", `${notebook}.ts`)).href;
  const made = ((await import(path)) as { readonly default: Notebook }).default.run(log);
  const page = { ...made, issues: [...issues, ...made.issues] };
  return { page, html: await writeHtml(page) };
}

function notebookNames(): string[] {
  const files = readdirSync(join(root, "notebooks")).filter((file) => file.endsWith(".ts"));
  return files.map((file) => file.slice(0, -3)).sort();
}
