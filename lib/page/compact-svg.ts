// The same drawing in fewer letters: a page holds every chart twice.

import { shortNumber, shortPath } from "./short-path.ts";

/** Attributes that pass from a group to what is in it. */
const INHERITED = new Set(
  `fill fill-opacity fill-rule stroke stroke-width stroke-opacity stroke-dasharray stroke-dashoffset stroke-linecap
  stroke-linejoin stroke-miterlimit text-anchor font-size font-weight font-style`.split(/\s+/),
);
/** The size of most letters in a chart, said once for the whole drawing. */
const LETTERS = ' font-size="12px"';
const LEAF = /<(line|path|rect|circle|text)((?: [\w-]+="[^"]*")*)(?:\/>|>([^<]*)<\/\1>)/g;
const ATTRIBUTE = / ([\w-]+)="([^"]*)"/g;
const PATH = / d="([^"]*)"/;
const CIRCLE = /^M([\d.]+),0A\1,\1,0,1,1,-\1,0A\1,\1,0,1,1,\1,0Z?$/;

interface Leaf {
  readonly tag: string;
  /** Attributes that could stand at a group, as text. */
  readonly style: string;
  readonly own: string;
  readonly words: string | undefined;
}

/**
 * Writes runs of like shapes with their common attributes said once, strokes of one look as one path, Vega's circles
 * as circles, and straight paths by shortPath. Expects what the sanitizer gives: double quotes, no "<" or ">" in
 * values. The picture is the same to a fifth of a pixel, but for where half-transparent strokes of one run cross.
 */
export function compactSvg(drawing: string): string {
  const svg = lettersOnce(drawing.replaceAll(' transform="translate(0,0)"', ""));
  const usual = usualAttributes(svg);
  let out = "";
  let at = 0;
  let run: Leaf[] = [];
  for (const match of svg.matchAll(LEAF)) {
    const leaf = leafOf(match[1]!, match[2]!, match[3], usual);
    const follows = match.index === at;
    if (!follows || (run.length > 0 && run[0]!.style !== leaf.style)) {
      out += written(run) + svg.slice(at, match.index);
      run = [];
    }
    run.push(leaf);
    at = match.index + match[0].length;
  }
  return out + written(run) + svg.slice(at);
}

function lettersOnce(svg: string): string {
  if (!svg.includes(LETTERS) || /<(?:g|svg)[^>]* font-size="/.test(svg)) return svg;
  return svg.replaceAll(LETTERS, "").replace("<svg", `<svg${LETTERS}`);
}

/** What a shape need not say, since nothing around it says otherwise. */
function usualAttributes(
  svg: string,
): (name: string, value: string, all: ReadonlyMap<string, string>) => boolean {
  const strokedGroup = /<g[^>]* stroke(?:-width)?="/.test(svg);
  return (name, value, all) =>
    name === "stroke-width" && !strokedGroup && (value === "1" || !all.has("stroke"));
}

function leafOf(
  tag: string,
  text: string,
  words: string | undefined,
  usual: ReturnType<typeof usualAttributes>,
): Leaf {
  const attributes = new Map<string, string>();
  for (const [, name, value] of text.matchAll(ATTRIBUTE)) attributes.set(name!, value!);
  const shape = asStroke(tag, attributes) ?? asCircle(tag, attributes) ?? tag;
  if (tag === "text") asPlaced(attributes);
  let style = "";
  let own = "";
  for (const [name, value] of attributes) {
    if (usual(name, value, attributes)) continue;
    if (INHERITED.has(name)) style += ` ${name}="${value}"`;
    else own += ` ${name}="${value}"`;
  }
  return { tag: shape, style, own, words };
}

/** Words at a place instead of moved there; changes the attributes in place. */
function asPlaced(attributes: Map<string, string>): void {
  const place = attributes.has("transform") ? translation(attributes) : undefined;
  if (!place || attributes.has("x") || attributes.has("y")) return;
  attributes.delete("transform");
  // Not shortened: a browser may set letters on whole pixels, and a tenth could move a word by one.
  attributes.set("x", place[0]);
  attributes.set("y", place[1]);
}

/** A line as a path; changes the attributes in place. */
function asStroke(tag: string, attributes: Map<string, string>): string | undefined {
  const start = translation(attributes);
  const [x2, y2] = [attributes.get("x2") ?? "0", attributes.get("y2") ?? "0"];
  if (tag !== "line" || !start || attributes.has("x1") || attributes.has("y1")) return undefined;
  for (const name of ["transform", "x2", "y2"]) attributes.delete(name);
  const way = x2 === "0" ? `v${y2}` : y2 === "0" ? `h${x2}` : `l${x2},${y2}`;
  attributes.set("d", `M${start[0]},${start[1]}${way}`);
  return "stroke";
}

/** A circle's path as a circle; changes the attributes in place. */
function asCircle(tag: string, attributes: Map<string, string>): string | undefined {
  const radius = CIRCLE.exec(attributes.get("d") ?? "")?.[1];
  const centre = translation(attributes);
  if (tag !== "path" || radius === undefined || !centre) return undefined;
  for (const name of ["transform", "d"]) attributes.delete(name);
  for (const [name, value] of Object.entries({ cx: centre[0], cy: centre[1], r: radius }))
    attributes.set(name, shortNumber(value));
  return "circle";
}

function translation(attributes: ReadonlyMap<string, string>): readonly [string, string] | undefined {
  const match = /^translate\((-?[\d.]+),(-?[\d.]+)\)$/.exec(attributes.get("transform") ?? "translate(0,0)");
  return match ? [match[1]!, match[2]!] : undefined;
}

function written(run: readonly Leaf[]): string {
  const groups = strokesTogether(run);
  const common = groups.length > 1 && run[0]!.style !== "";
  const shapes = groups.map((group) => {
    const { tag, style, own, words } = group[0]!;
    const name = tag === "stroke" ? "path" : tag;
    // Joined once for all: a chart of a thousand batches has as many strokes.
    const d = group.map((leaf) => path(leaf.own)).join("");
    const plain = group.length === 1 ? own : `${rest(own)} d="${d}"`;
    const short = d === "" ? plain : plain.replace(PATH, () => ` d="${shortPath(d)}"`);
    const attributes = short + (common ? "" : style);
    return words === undefined ? `<${name}${attributes}/>` : `<${name}${attributes}>${words}</${name}>`;
  });
  return common ? `<g${run[0]!.style}>${shapes.join("")}</g>` : shapes.join("");
}

/** Neighbours that differ in their places alone are one shape. */
function strokesTogether(run: readonly Leaf[]): readonly (readonly Leaf[])[] {
  const groups: Leaf[][] = [];
  let like: string | undefined;
  for (const leaf of run) {
    const own = leaf.tag === "stroke" ? rest(leaf.own) : undefined;
    if (own !== undefined && own === like) groups.at(-1)!.push(leaf);
    else groups.push([leaf]);
    like = own;
  }
  return groups;
}

function path(own: string): string {
  return PATH.exec(own)?.[1] ?? "";
}

function rest(own: string): string {
  return own.replace(PATH, "");
}
