// Which figures the window shows, known beforehand: to ask their places in the middle of a change would have the browser
// lay the whole page out for the answer.

export interface InView {
  /** Their numbers, in the order of the page. */
  numbers(): number[];
  /** After figures have come or gone. */
  follow(): void;
}

export function figuresInView(): InView {
  const seen = new Set<Element>();
  const watched = new Set<Element>();
  let told = false;
  const observer = new IntersectionObserver((entries) => {
    told = true;
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) seen.add(target);
      else seen.delete(target);
    }
  });
  const follow = (): void => {
    for (const figure of watched) {
      if (figure.isConnected) continue;
      observer.unobserve(figure);
      watched.delete(figure);
      seen.delete(figure);
    }
    for (const figure of document.querySelectorAll("main figure")) {
      if (watched.has(figure)) continue;
      watched.add(figure);
      observer.observe(figure);
    }
  };
  follow();
  return {
    numbers: () =>
      [...document.querySelectorAll("main figure")]
        .filter((figure) => (told ? seen.has(figure) : isSeen(figure)))
        .map(({ id }) => Number(id.replace("figure-", ""))),
    follow,
  };
}

/** Before the browser has told for the first time. */
function isSeen(figure: Element): boolean {
  const { top, bottom, height } = figure.getBoundingClientRect();
  return height > 0 && bottom > 0 && top < innerHeight;
}
