// mullbook reference: every public name with its comment, as a page; or one of them on the terminal.

import { join } from "node:path";
import { nearest } from "../numbers/nearest.ts";
import { type Console, type ExitCode, refuse } from "./console.ts";
import { packageFolder, packageVersion } from "./package-folder.ts";
import { referenceEntries } from "./reference-entries.ts";
import { referenceHtml } from "./reference-html.ts";
import { isRefusal } from "./refusal.ts";
import { writeFiles } from "./write-files.ts";

export async function reference(
  name: string,
  { to = "." }: { readonly to?: string },
  console: Console,
): Promise<ExitCode> {
  const entries = referenceEntries(join(packageFolder, "dist", "types"));
  if (!entries)
    return refuse(console, { refused: "The types are not built.", remedy: "Build them: npm run build" });
  if (name === "") {
    const page = await referenceHtml(entries, packageVersion());
    const written = writeFiles(to, { "reference.html": page }, []);
    if (isRefusal(written)) return refuse(console, written);
    for (const path of written.paths) console.result(path);
    console.say("Open it in a browser; one name on the terminal: mullbook reference grainFineness");
    return 0;
  }
  const plain = name.replace(/\(.*/, "").toLowerCase();
  const alike = entries.filter((entry) => entry.name.toLowerCase() === plain);
  const found =
    alike.find((entry) => entry.name === name) ?? alike.find(({ kind }) => kind !== "type") ?? alike[0];
  if (!found) {
    const names = entries.map((entry) => entry.name);
    const holding = names.filter((one) => one.toLowerCase().includes(plain)).slice(0, 8);
    const near = nearest(plain, names);
    const remedy =
      near !== undefined
        ? `Did you mean: mullbook reference ${near}`
        : holding.length > 0
          ? `There are: ${holding.join(", ")}.`
          : "All of them on a page: mullbook reference";
    return refuse(console, { refused: `There is no public name "${name}".`, remedy });
  }
  console.result(found.comment === "" ? found.signature : `${found.signature}\n\n${found.comment}`);
  return 0;
}
