// The block under a write-up's title, and the list of the files that travel with a page.

export const TITLE_STYLE = `.title-block{display:grid;grid-template-columns:repeat(auto-fit,minmax(11rem,1fr));gap:.15rem 1.6rem;border-top:1px solid var(--ink);border-bottom:1px solid var(--ink);padding:.55rem 0;margin:0 0 1rem;font:.85rem/1.45 var(--sans)}
.title-block dt{color:var(--quiet);font-size:.78rem}
.title-block dd{margin:0;overflow-wrap:anywhere}
.files li{overflow-wrap:anywhere}`;
