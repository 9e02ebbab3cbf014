// What a card adds to the look of a page: everything on one sheet, lines to write on.

export const CARD_STYLE = `@page{margin:12mm 14mm}
body{max-width:48rem;padding-top:1.5rem}
html{font-size:15px}
h1{font-size:1.6rem;margin:0}
header{display:flex;flex-wrap:wrap;gap:0 1rem;align-items:baseline}
.question{margin:0}
p,ul,ol,.caution{max-width:none}
.caution{padding:.5rem .8rem;margin:.6rem 0;line-height:1.4}
.caution ul{font-size:.9rem;margin-bottom:.2rem}
.caution li,ol li{margin:.1rem 0}
.defers{font-size:.85rem}
.rig{display:flex;flex-wrap:wrap;gap:.3rem 1.4rem;align-items:center;line-height:1.4}
.rig>div{flex:1 1 17rem}
.rig figure{margin:.2rem 0;flex:0 0 23rem;max-width:100%}
.rig ol{margin-bottom:.4rem}
.once{display:grid;grid-template-columns:repeat(auto-fill,minmax(15rem,1fr));gap:.15rem 1.2rem;margin:.5rem 0 .7rem;font-family:var(--sans);font-size:.8rem}
.once>div{display:flex;flex-wrap:wrap;gap:0 .4rem}
.blank{flex:1 0 100%;min-height:1.4rem;border-bottom:1px solid var(--ink);text-align:right;color:var(--quiet)}
.key{font-weight:600;white-space:nowrap}
.boxes{width:100%;margin:.3rem 0}
.boxes .write{width:14%}
.boxes th,.boxes td{border:1px solid var(--ink);padding:.22rem .4rem;height:1.72rem;vertical-align:middle}
.dense{font-size:.68rem;table-layout:fixed}
.dense th,.dense td{padding:.2rem .25rem;min-width:0}
.dense th{padding-inline:.1rem;font-size:.6rem;text-align:center;overflow-wrap:normal}
.boxes .unit{font-size:.85em}
.works{font:.82rem/1.4 var(--sans);margin:.3rem 0}
.copy{font-size:.9rem;margin:.4rem 0 .1rem}
pre,code{font-family:ui-monospace,"SF Mono",Consolas,monospace}
pre{font-size:.72rem;line-height:1.5;margin:0;padding:.4rem .7rem;border-left:3px solid var(--rule);white-space:pre-wrap;overflow-wrap:anywhere}
pre>span{display:block;padding-left:12ch;text-indent:-12ch}
footer{margin-top:.6rem;padding-top:.3rem}
@media print{html{font-size:9.3pt}
body{padding:0}
.once{font-size:.75rem}
.boxes :is(th,td){height:2.05rem}
.blank{min-height:1.7rem}}`;
