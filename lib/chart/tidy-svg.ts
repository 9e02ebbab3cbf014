// Makes the SVG that Vega writes smaller, named and readable to those who cannot see it.

import { font } from "./theme.ts";

/** Signs that XML does not allow, even escaped. */
const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/** Attributes that say what holds anyway, and roles of single marks: the picture has one role and one text. */
const idle =
  / (aria-[\w-]+|role|pointer-events)="[^"]*"| (opacity="1"|font-weight="normal"|stroke-dasharray=""|text-anchor="start")/gu;

const face = ` font-family="${font}"`;
const drawn = /^(d|transform|x|y|x1|y1|x2|y2|width|height|cx|cy|r|stroke-width|stroke-miterlimit|viewBox)$/u;

/** Text as the content of an element. */
export function escapedText(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll(control, " ");
}

/** Text as the content of an attribute in double quotes, or of an element. */
function escaped(text: string): string {
  return escapedText(text).replaceAll('"', "&quot;");
}

/** Coordinates to 0.01 px; other attributes as they are. */
function roundTag(tag: string): string {
  return tag.replaceAll(/ ([\w-]+)="([^"]*)"/gu, (whole, name: string, value: string) => {
    if (!drawn.test(name)) return whole;
    const short = value.replaceAll(/-?\d*\.\d+(e[+-]?\d+)?/gu, (number) => {
      const rounded = String(Number(Number(number).toFixed(2)));
      return rounded === "-0" ? "0" : rounded;
    });
    return ` ${name}="${short}"`;
  });
}

/** Class names from layers ("band_marks", "points_1_marks") become the layer's name, once bare and once numbered. */
function nameTag(tag: string): string {
  return tag.replace(/ class="([^"]*)"/u, (_, classes: string) => {
    const layer = /(?:^| )([a-z]\w*)_marks$/u.exec(classes)?.[1]?.replaceAll("_", "-");
    if (layer === undefined) return /\brole-axis /u.test(`${classes} `) ? ' class="axis"' : "";
    return ` class="${[...new Set([layer.replace(/-\d+$/u, ""), layer])].join(" ")}"`;
  });
}

/** Strips size, empty backgrounds and idle attributes from Vega's SVG and gives it role, title and description. */
export function tidySvg(
  svg: string,
  words: { readonly title: string; readonly description: string },
): string {
  const body = svg
    .slice(svg.indexOf(">", svg.indexOf("<svg")) + 1)
    .replace(/<\/svg>\s*$/u, "")
    .replaceAll(/<path class="(back|fore)ground"[^>]*\/>|<rect [^>]*fill="transparent"[^>]*\/>/gu, "")
    .replaceAll(/<[a-z][^>]*>/gu, (tag) => nameTag(roundTag(tag)).replaceAll(idle, "").replace(face, ""))
    .replaceAll(/<g class="axes"\/>/gu, "")
    .replaceAll(control, " ");
  const viewBox = / viewBox="([^"]*)"/u.exec(svg)?.[1] ?? "0 0 0 0";
  return `${svgHead(viewBox, words)}${body}</svg>`;
}

/** The opening tag, with role and words for the reader who cannot see the drawing. */
export function svgHead(
  viewBox: string,
  { title, description }: { readonly title: string; readonly description: string },
): string {
  const label = escaped(description || title);
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}" role="img" aria-label="${label}" font-family="${font}">`;
  return `${head}<title>${escaped(title)}</title><desc>${escaped(description)}</desc>`;
}
