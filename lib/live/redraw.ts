// Keeps the page in step with the session: asks for a new working out, and puts in what comes of it.

import type { LogText } from "../log/types.ts";
import type { HtmlParts } from "../page/html-parts.ts";
import { h, shownText } from "./edit-dom.ts";
import { figuresInView } from "./in-view.ts";
import { noLog, notebookFailed } from "./live-messages.ts";
import { mainMarkup, morph } from "./morph.ts";
import { carryMarks, marksTurned } from "./places.ts";
import type { Session } from "./session.ts";
import type { Drawn, FigureRest, Told, Wanted } from "./work-out.ts";

export interface Redraw {
  /** What the engine tells. */
  readonly hear: (told: Told) => void;
  /** Works the page out as it is, unseen, so that the first change finds all of it warm. */
  readonly warm: () => void;
}

/** Below this the narrow drawings are shown: as in the style sheet. */
const NARROW = "(max-width:765px)";

/** Dispatched at the document: new parts were put in; everything that the window can show is right again. */
export const REDRAWN = "mullbook:redrawn";
export const SETTLED = "mullbook:settled";
/** And the drawings for the other width, which no one sees before they are there. */
const DRAWN = "mullbook:drawn";

export function redrawOf(session: Session, want: (wanted: Wanted) => void): Redraw {
  const inView = figuresInView();
  let id = 0;
  let pageId = 0;
  let asked: readonly LogText[] = session.worked;
  let shown = new Map<string, string>();
  /** Asked a second time for the same texts. */
  let again = false;
  const busy = (on: boolean): void => {
    for (const part of document.querySelectorAll("body > header, main")) {
      if (on) part.setAttribute("aria-busy", "true");
      else part.removeAttribute("aria-busy");
    }
  };

  function ask(): void {
    asked = session.worked;
    want({
      id: ++id,
      texts: asked,
      check: session.large,
      shows: matchMedia(NARROW).matches ? "narrow" : "wide",
      inView: inView.numbers(),
      drawn: drawnKeys(),
    });
  }

  function put({ header, sections, footer }: HtmlParts, drawings: readonly Drawn[]): void {
    const byKey = new Map(drawings.map(({ key, html }) => [key, html]));
    const drawing = (from: HTMLElement, to: HTMLElement): void => {
      const key = to.dataset.drawn ?? "";
      from.dataset.drawn = key;
      const html = byKey.get(key);
      if (html === undefined) from.dataset.waiting = "";
      else fill(from, html);
    };
    const parts = { header, footer };
    for (const name of ["header", "footer"] as const) {
      const element = document.querySelector(`body > ${name}`);
      if (element && parts[name] !== "" && shown.get(`:${name}`) !== parts[name])
        morph(element, parts[name], { drawing });
    }
    const main = document.querySelector("main");
    if (main) morph(main, mainMarkup(sections, shown), { drawing });
    shown = new Map(sections.map(({ id, html }) => [id, html]));
    shown.set(":header", header).set(":footer", footer);
    for (const one of drawings) fillWaiting(one);
    // A chart that was not there before has come with an empty place.
    for (const place of document.querySelectorAll<HTMLElement>("[data-drawn]:empty")) drawing(place, place);
    letSentencesBeHeard();
    inView.follow();
  }

  function hear(told: Told): void {
    // The rest of what is shown already is shown as well, whatever is wanted meanwhile.
    if (told.kind === "rest" && told.id === pageId) told.figures.forEach(putRest);
    if (told.id !== id) return;
    switch (told.kind) {
      case "rest":
        return;
      case "page": {
        pageId = told.id;
        const turned = session.whatIfs.length === 0 ? told.parts : inTexts(told.parts, session);
        document.title = shownText(told.title);
        notice([]);
        const unsettled = document.querySelector("main")?.hasAttribute("aria-busy");
        put(turned, told.drawings);
        if (unsettled) busy(true);
        if (told.issues) session.heard(asked, told.issues);
        document.dispatchEvent(new CustomEvent(REDRAWN));
        return;
      }
      case "drawing":
        fillWaiting(told.drawing);
        return;
      case "done":
        told.drawings.forEach(fillWaiting);
        busy(false);
        document.dispatchEvent(new CustomEvent(SETTLED, { detail: told.ms }));
        return;
      case "drawn":
        // A page that was given up for this one may have told of its drawings when this one was asked for already.
        if (!again && document.querySelector("main [data-waiting]")) {
          again = true;
          ask();
          return;
        }
        document.dispatchEvent(new CustomEvent(DRAWN));
        return;
      case "none":
      case "fault":
        notice(told.kind === "none" ? noLog(told.issues) : notebookFailed(told.message));
        busy(false);
        document.dispatchEvent(new CustomEvent(SETTLED));
        return;
    }
  }

  session.subscribe((splices) => {
    // Their markup is no longer what was put in: the way back, before a page was told, may find another place.
    const turned = carryMarks(document, splices);
    for (const part of new Set(turned.map((element) => element.closest("main > section, header, footer"))))
      shown.delete(part?.matches("section") ? part.id : `:${part?.localName}`);
    // A save changes nothing that is shown.
    if (session.worked === asked) return;
    busy(true);
    again = false;
    ask();
  });
  return { hear, warm: ask };
}

function inTexts(parts: HtmlParts, session: Session): HtmlParts {
  const turned = (markup: string): string => marksTurned(markup, session.placeInTexts);
  return {
    header: turned(parts.header),
    sections: parts.sections.map(({ id, html }) => ({ id, html: turned(html) })),
    footer: parts.footer,
  };
}

/** html is a drawing that passed the page's own filter: shapes and words, nothing that loads or runs. */
function fill(place: HTMLElement, html: string): void {
  place.innerHTML = html;
  delete place.dataset.waiting;
  if (place.querySelector(".undrawable")) letSentencesBeHeard();
}

/** A sentence in place of a drawing is read out: within an image nobody would hear it. The next page makes it one again. */
function letSentencesBeHeard(): void {
  for (const sentence of document.querySelectorAll("main .undrawable")) {
    const image = sentence.closest("[role=img]");
    image?.removeAttribute("role");
    image?.removeAttribute("aria-label");
  }
}

function putRest({ number, width, key, readings }: FigureRest): void {
  const figure = document.getElementById(`figure-${number}`);
  const place = figure?.querySelector<HTMLElement>(`.${width}[data-drawn]`);
  if (!figure || !place) return;
  if (place.dataset.drawn !== key) {
    place.dataset.drawn = key;
    place.dataset.waiting = "";
  }
  if (readings !== "") figure.dataset.readings = readings;
  else delete figure.dataset.readings;
}

function fillWaiting({ key, html }: Drawn): void {
  for (const place of document.querySelectorAll<HTMLElement>(`[data-drawn="${key}"][data-waiting]`)) {
    fill(place, html);
  }
}

function drawnKeys(): string[] {
  return [...document.querySelectorAll<HTMLElement>("[data-drawn]:not([data-waiting])")].map(
    ({ dataset }) => dataset.drawn ?? "",
  );
}

/** Lines under the page's head, or none. */
function notice(lines: readonly string[]): void {
  document.querySelector(".live-notice")?.remove();
  if (lines.length === 0) return;
  const box = document.createElement("div");
  box.className = "live-notice";
  box.dataset.live = "";
  box.setAttribute("role", "alert");
  for (const line of lines) box.append(h("p", {}, line));
  document.querySelector("body > header")?.after(box);
}
