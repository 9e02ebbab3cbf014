// How a founder's script finds its parts; texts, since node runs them in a thread of its own.

const asUrl = (code: string) => `data:text/javascript,${encodeURIComponent(code)}`;

/** "mullbook" is the library that runs the script, as it stands: not read again through tsx. */
export const DOOR_HOOK = asUrl(`
let door;
export function initialize(url) { door = url; }
export function resolve(specifier, context, next) {
  return specifier === "mullbook" ? { url: door, format: "module", shortCircuit: true } : next(specifier, context);
}`);

/** A script with an import or export statement is a module, whatever package.json says or if there is none. */
export const MODULES_HOOK = asUrl(String.raw`
import { readFileSync } from "node:fs";
export async function resolve(specifier, context, next) {
  const found = await next(specifier, context);
  const { protocol, pathname } = new URL(found.url);
  if (protocol !== "file:" || !/\.[jt]s$/.test(pathname) || pathname.includes("/node_modules/")) return found;
  const text = readFileSync(new URL("file://" + pathname), "utf8");
  return /^\s*(import|export)\b/m.test(text) ? { ...found, format: "module" } : found;
}`);
