// A drawing as a page may hold it: only shapes and words, nothing that loads, links or runs.

import { colours } from "../chart/theme.ts";
import { compactSvg } from "./compact-svg.ts";
import { isolated, visible } from "./visible.ts";

const ELEMENTS = new Set(
  "svg g path rect line circle ellipse polygon polyline text tspan defs clipPath linearGradient radialGradient stop pattern".split(
    " ",
  ),
);
const ATTRIBUTES = new Set(
  `xmlns version viewBox width height x y x1 y1 x2 y2 cx cy r rx ry d points dx dy transform id offset
  fill fill-opacity fill-rule stroke stroke-width stroke-opacity stroke-dasharray stroke-dashoffset stroke-linecap
  stroke-linejoin stroke-miterlimit opacity clip-path display text-anchor dominant-baseline font-family font-size
  font-weight font-style gradientTransform gradientUnits stop-color stop-opacity patternUnits patternTransform`.split(
    /\s+/,
  ),
);
/** What a drawing says to those who cannot see it; kept in a file of its own. */
const WORD_ELEMENTS = new Set(["title", "desc"]);
const WORD_ATTRIBUTES = new Set(["role", "aria-label"]);
/** A tag with quoted attributes, a comment or the like, or text; a stray "<" counts as text. */
const TOKEN =
  /<(\/?)([A-Za-z][\w:-]*)((?:\s+[\w:-]+\s*=\s*"[^"]*")*)\s*(\/?)>|<!--[\s\S]*?-->|<[?!][^>]*>|[^<]+|</g;
const ATTRIBUTE = /([\w:-]+)\s*=\s*"([^"]*)"/g;

/** Numbers, steps of a path and shifts: nothing in them loads, hides, or is a colour of ours. */
const PLACES = /^(?:translate\([-\d.,]+\)|[-+\w., ]*)$/;
const COORDINATES = /^(d|points|transform|viewBox|width|height|c?[xyr]|[xy][12]|r[xy]|d[xy])$/;

const NAME_OF_COLOUR = new Map(
  Object.entries(colours).map(([name, hex]): [string, string] => [hex, cssName(name)]),
);

/** The custom property of a colour of the charts: "bandEdge" becomes "--band-edge". */
export function cssName(colour: string): string {
  return `--${colour.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}

/**
 * A drawing to stand within an HTML page: hidden from screen readers (the figure around it carries the text),
 * its ids made the page's own by the prefix, its colours swapped for the style sheet's custom properties.
 */
export function inlineSvg(svg: string, idPrefix: string): string {
  const change = (name: string, value: string) => {
    if (name === "xmlns" || name === "version" || name === "font-family") return undefined;
    if (name === "id") return idPrefix + value;
    const variable = NAME_OF_COLOUR.get(value.toLowerCase());
    if (variable) return `var(${variable})`;
    return value.replaceAll("url(#", `url(#${idPrefix}`);
  };
  return compactSvg(cleaned(svg, false, change)).replace("<svg", '<svg aria-hidden="true"');
}

/** A drawing as a file of its own, with the words that it carries for those who cannot see it. */
export function standaloneSvg(svg: string): string {
  return `${cleaned(svg, true, (_, value) => value)}\n`;
}

type Change = (name: string, value: string) => string | undefined;

function cleaned(svg: string, withWords: boolean, change: Change): string {
  const out: string[] = [];
  // For each open element what closes it: "" where only its tags are left out, undefined where all of it is.
  const open: { readonly element: string; readonly closing: string | undefined }[] = [];
  let hiding = 0;
  const opened = (element: string, closing: string | undefined): void => {
    open.push({ element, closing });
    if (closing === undefined) hiding += 1;
  };
  for (const [token, slash, element, attributes, empty] of svg.matchAll(TOKEN)) {
    if (element === undefined) {
      const comment = token.startsWith("<") && token.length > 1;
      if (open.length === 0 || hiding > 0 || comment) continue;
      out.push(token === "<" ? "&lt;" : isolated(visible(token)).replaceAll(">", "&gt;"));
    } else if (slash === "/") {
      // A tag that closes nothing is none.
      if (open.at(-1)?.element !== element) continue;
      const { closing } = open.pop()!;
      const hidden = hiding > 0;
      if (closing === undefined) hiding -= 1;
      if (hidden) continue;
      // A group that holds nothing is left out again.
      if (closing === "</g>" && out.at(-1)?.startsWith("<g")) out.pop();
      else out.push(closing ?? "");
    } else {
      const known = ELEMENTS.has(element) || (withWords && WORD_ELEMENTS.has(element));
      const kept = keptAttributes(attributes ?? "", withWords, change);
      const bare = element === "g" && kept === "";
      if (!known || hiding > 0 || drawsNothing(element, kept)) {
        if (empty !== "/") opened(element, undefined);
      } else if (empty === "/") {
        if (element !== "g") out.push(`<${element}${kept}/>`);
      } else {
        if (!bare) out.push(`<${element}${kept}>`);
        opened(element, bare ? "" : `</${element}>`);
      }
    }
  }
  for (const { closing } of open.reverse()) out.push(closing ?? "");
  return out.join("");
}

function keptAttributes(text: string, withWords: boolean, change: Change): string {
  let kept = "";
  for (const [, name, value] of text.matchAll(ATTRIBUTE)) {
    if (!ATTRIBUTES.has(name!) && !(withWords && WORD_ATTRIBUTES.has(name!))) continue;
    const isPlace = COORDINATES.test(name!);
    if (isPlace && PLACES.test(value!)) {
      kept += ` ${name}="${rounded(value!)}"`;
      continue;
    }
    if (/url\(\s*["']?[^#"'\s]/i.test(value!)) continue;
    if (name === "opacity" && value === "1") continue;
    const changed = change(name!, isPlace ? rounded(value!) : value!);
    if (changed !== undefined)
      kept += ` ${name}="${visible(changed).replaceAll("<", "&lt;").replaceAll(">", "&gt;")}"`;
  }
  return kept;
}

function drawsNothing(element: string, attributes: string): boolean {
  return (
    attributes.includes(' display="none"') || (element === "path" && / d="(?:M0,0h0v0h0Z)?"/.test(attributes))
  );
}

/** A tenth of a pixel is finer than any screen, and a fortieth of a millimetre on paper. */
function rounded(value: string): string {
  return value.replace(/-?\d+\.\d{2,}(?:e-?\d+)?/g, (digits) => String(Math.round(Number(digits) * 10) / 10));
}
