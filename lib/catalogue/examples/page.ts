// What messages on a page's own words may be said with.

import type { Examples } from "../example.ts";

export const page: Examples = {
  "page/error-notice": { count: "20" },
  "page/figure": { number: "1" },
  "page/figure-data": { number: "1" },
  "page/kept-by": { founder: "Isolde Vantongeren-Pike (invented)" },
  "page/log": { file: "like-the-old-sand.yaml", fingerprint: "49104577" },
  "page/more-errors": { count: "12" },
  "page/more-hazards": { others: "0" },
  "page/others": { notesOnly: true },
  "page/severity": { severity: "warning" },
  "page/source": { source: "Counting sieves with 10 % or more: trade usage, from memory" },
  "page/table": { number: "10" },
  "page/table-more-rows": { from: "41", to: "200" },
  "page/table-note": { number: "1" },
  "page/table-note-text": {
    number: "1",
    text: "An invented handbook of many pages, table 4, on the uses of sand",
  },
  "page/table-part": { part: "1", parts: "4" },
  "page/table-rows": { from: "41", to: "200" },
  "page/tone": { tone: "doubt" },
};
