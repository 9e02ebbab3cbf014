// From a spec to SVG text: plainly where the spec keeps to what our charts are made of, else by Vega. The only file that
// knows vega and vega-lite; both are loaded when first needed.

import { invariant } from "../issue.ts";
import type { VegaLiteSpec } from "./chart.ts";
import { plainSvg } from "./plain-svg.ts";
import { tidySvg } from "./tidy-svg.ts";

/**
 * Draws a Vega-Lite spec as SVG: no window, no network, nothing that changes from run to run.
 *
 * The SVG has a viewBox and no size, so that the page decides how wide it stands; role, title and description for the
 * reader who cannot see it; groups whose class is the layer's name ("band", "points-1", "interval-2", …), so that a
 * style sheet finds them; and coordinates to 0.01 px.
 *
 * A spec that asks for a file or an address, or that Vega-Lite warns about, throws Misuse.
 *
 * @example
 * const chart = doubtBars({ name: "doubt", shares: [{ label: "weighing of the pan", sharePercent: 62 }] });
 * (await chartSvg(chart.spec(720))).slice(0, 4) // "<svg"
 */
export async function chartSvg(spec: VegaLiteSpec): Promise<string> {
  return plainSvg(spec) ?? vegaSvg(spec);
}

/**
 * The same drawing, to the letter, where a policy forbids to run code made of text: Vega's expressions are walked
 * through in place of being compiled, which takes longer.
 */
export async function chartSvgWithoutCode(spec: VegaLiteSpec): Promise<string> {
  return plainSvg(spec) ?? vegaSvgWithoutCode(spec);
}

/** By Vega, whatever the spec. */
export async function vegaSvg(spec: VegaLiteSpec): Promise<string> {
  return drawn(spec);
}

/** By Vega without code made of text, whatever the spec. */
export async function vegaSvgWithoutCode(spec: VegaLiteSpec): Promise<string> {
  return drawn(spec, (await import("vega-interpreter")).expressionInterpreter);
}

async function drawn(spec: VegaLiteSpec, interpreter?: unknown): Promise<string> {
  const [vega, { compile }] = await Promise.all([import("vega"), import("vega-lite")]);
  // Widths of words are estimated wherever this runs: a browser's own would set them elsewhere than the written page.
  (vega as unknown as { readonly textMetrics: { canvas(use: boolean): void } }).textMetrics.canvas(false);
  const complaints: string[] = [];
  const hear = (...parts: readonly unknown[]) => {
    complaints.push(parts.map(String).join(" "));
    return logger;
  };
  const logger = { level: () => logger, error: hear, warn: hear, info: () => logger, debug: () => logger };
  const compiled = compile(structuredClone(spec) as never, { logger: logger as never }).spec;
  const refuse = async (uri: string): Promise<never> => {
    throw new Error(`a chart reads nothing from outside: ${uri}`);
  };
  const loader = { load: refuse, sanitize: refuse, http: refuse, file: refuse };
  const walked = interpreter === undefined ? {} : { expr: interpreter };
  const program = vega.parse(compiled, undefined, interpreter === undefined ? {} : { ast: true });
  const view = new vega.View(program, {
    ...walked,
    renderer: "none",
    loader: loader as never,
    logger: logger as never,
  });
  try {
    const svg = await view.toSVG();
    invariant(complaints.length === 0, `the chart cannot be drawn: ${complaints.join("; ")}`);
    const usermeta = spec.usermeta as { readonly title?: string } | undefined;
    return tidySvg(svg, { title: usermeta?.title ?? "", description: String(spec.description ?? "") });
  } finally {
    view.finalize();
  }
}
