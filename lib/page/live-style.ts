// The look of what a live page has besides the page: quiet, in the margin of the note, and never on paper.

const CELLS = `.at{cursor:text;border-radius:2px;text-decoration:underline dotted color-mix(in srgb,var(--quiet) 75%,transparent);text-decoration-thickness:1.5px;text-underline-offset:.28em;padding:.3rem .1rem;margin:-.3rem -.1rem}
.at:hover{text-decoration-color:var(--fitted);text-decoration-style:solid}
.at:focus-visible{outline-offset:1px}
.at>[class^=w]{display:inline-block;white-space:pre;text-align:left;text-decoration:inherit;text-underline-offset:.28em}
.at.live-changed{text-decoration:underline solid var(--measured) 2px;font-weight:650}

td:has(>.live-changed),th:has(>.live-changed){box-shadow:inset 3px 0 0 -1px var(--measured)}
.at.live-tried{text-decoration:underline wavy var(--fitted) 1.5px;font-style:italic}
.at.live-tried::after{content:" what if";font:600 .72em var(--sans);letter-spacing:.02em;color:var(--fitted);font-style:normal}
.live-faulty{display:block;cursor:text;white-space:normal;text-align:left;width:10rem;border:1px dashed var(--ink);padding:.1rem .35rem;margin:.15rem 0}
.live-faulty .live-typed{font-weight:650}
.live-faulty .fault{display:block;max-width:none;color:var(--ink)}`;

const FIELDS = `:is(.live-furniture,.live) :is(button,input){font:inherit;color:inherit;background:var(--paper);border:1px solid color-mix(in srgb,var(--quiet) 70%,transparent);border-radius:3px;min-height:2.75rem;padding:.3rem .7rem}
.live button{font:.85rem/1.3 var(--sans);min-height:2rem;padding:.15rem .6rem;cursor:pointer}
.live-furniture button{cursor:pointer;font-size:.85rem}
.live-furniture button:hover,.live button:hover{border-color:var(--ink)}
.live-furniture button[aria-disabled=true]{color:var(--quiet);border-color:color-mix(in srgb,var(--rule) 80%,transparent);cursor:default}
.live-furniture input{width:100%;cursor:text}
.live-furniture input::placeholder{color:var(--quiet);font-style:italic;opacity:1}
.live-furniture input[aria-invalid=true]{border:2px dashed var(--ink)}
.live-furniture input.live-changed{border-left:4px solid var(--measured)}
.live-furniture{font:.9rem/1.45 var(--sans);font-variant-numeric:lining-nums tabular-nums}
.live-furniture p{margin:0;max-width:none}
.live-furniture .live-actions{display:flex;flex-wrap:wrap;gap:.5rem;margin-top:.55rem}
.live-note,.live-told,.live-quiet{font-size:.82rem;color:var(--quiet)}
.live-fault{color:var(--ink);border-left:3px double var(--ink);padding-left:.55rem}
.live-what{font-size:.85rem}
[hidden]{display:none!important}`;

const INVITATION = `.live{margin:1.4rem 0 0;font:.85rem/1.5 var(--sans);color:var(--quiet)}
.live p{margin:0;max-width:none}
[data-waking],[data-waking] .at{cursor:progress}`;

const EDITOR = `.live-layer{position:absolute;top:0;left:0;z-index:6}
.live-over{position:absolute;width:var(--w);max-width:calc(100vw - 1rem);scroll-margin:1rem 0 6rem}
.live-over>:is(.live-under,.live-try){margin-left:var(--back,0)}
.live-over>.live-cell{width:var(--w);height:var(--h);min-height:2.2rem;padding:.1rem .4rem;border:2px solid var(--fitted);border-radius:2px;font-size:max(1rem,16px)}
.live-over>.live-cell[aria-invalid=true]{border:2px dashed var(--ink)}
.live-furniture:has(.live-over>.live-try) .live-tries{display:none}
.live-under,.live-try{background:var(--paper);border:1px solid var(--rule);border-left:3px solid var(--measured);padding:.6rem .8rem .7rem;margin-top:.25rem;width:min(21rem,100vw - 1rem);box-shadow:0 6px 18px -8px color-mix(in srgb,var(--ink) 45%,transparent)}
.live-try{border-left-color:var(--fitted)}
.live-try .live-cell{margin:.35rem 0;font-size:max(1rem,16px)}
.live-ends{display:grid;grid-template-columns:auto 1fr auto;align-items:center;gap:.6rem;margin-bottom:.35rem;font-size:.8rem;color:var(--quiet);white-space:nowrap}
.live-furniture input[type=range]{padding:0;border:0;min-height:2.75rem;accent-color:var(--fitted);background:none;min-width:4rem;cursor:pointer}`;

const BAR = `.live-bar{position:fixed;inset:auto 0 0;margin:0;z-index:4;background:var(--paper);border-top:1px solid var(--rule);padding:.45rem max(1rem,50vw - 360px) calc(.45rem + env(safe-area-inset-bottom))}
.live-buttons{display:flex;flex-wrap:wrap;align-items:center;gap:.45rem}
.live-state{flex:1;text-align:right;font-size:.82rem;color:var(--quiet);min-width:max-content}
.live-unsaved .live-state{color:var(--ink);font-weight:600}
.live-unsaved .live-main{border-color:var(--ink);border-left:4px solid var(--measured)}
.live-working:not(:empty){position:absolute;bottom:100%;background:var(--paper);border:1px solid var(--rule);border-bottom:0;border-left:3px solid var(--fitted);padding:.3rem .7rem;font-size:.82rem}
.live-said:not(:empty){font-size:.82rem;color:var(--quiet);margin:.35rem 0 0}
.live-tries{margin-bottom:.4rem}
.live-tries p{border-left:3px solid var(--fitted);padding-left:.6rem;font-size:.85rem}
.live-tries p+p{margin-top:.3rem}
.live-tries button{min-height:2.2rem;margin-left:.3rem}
.live-on body{padding-bottom:9rem}
.live-notices{position:fixed;inset:auto 0 calc(var(--bar,4.6rem) + .5rem);z-index:5;padding:0 max(1rem,50vw - 360px);display:grid;gap:.5rem;pointer-events:none}
.live-message{pointer-events:auto;background:var(--paper);border:1px solid var(--ink);border-left-width:5px;padding:.7rem .9rem;max-height:60vh;overflow:auto;box-shadow:0 6px 18px -8px color-mix(in srgb,var(--ink) 45%,transparent)}
.live-differences{display:grid;gap:.7rem;margin-top:.6rem;max-height:30vh;overflow:auto}
.live-differences pre{font:.8rem/1.5 ui-monospace,"SF Mono",Consolas,monospace;white-space:pre-wrap;overflow-wrap:anywhere;margin:.2rem 0;border-left:2px solid var(--rule);padding-left:.6rem}
.live-ribbon{border:1px solid var(--fitted);border-left-width:5px;padding:.5rem .9rem;margin:-1.2rem 0 1.6rem;font:.9rem/1.45 var(--sans);background:var(--paper);position:sticky;top:0;z-index:3}
.live-ribbon p{margin:0;max-width:none}`;

const PANEL = `.live-panel{position:fixed;z-index:4;inset:auto 0 var(--bar,0);height:min(70vh,46rem);background:var(--paper);border-top:3px solid var(--ink);display:flex;flex-direction:column;box-shadow:0 -8px 24px -14px color-mix(in srgb,var(--ink) 50%,transparent)}
.live-panel-head{display:flex;justify-content:space-between;align-items:center;padding:.4rem 1rem;border-bottom:1px solid var(--rule)}
.live-panel h2{margin:0;font-family:var(--serif,inherit)}
.live-panel-inside{overflow:auto;overscroll-behavior:contain;padding:.7rem 1rem 3rem;flex:1}
.live-changes{border:0;border-left:3px solid var(--rule);padding:.1rem 0 .1rem .8rem;margin:.8rem 0 1rem}
.live-changes:has(li){border-left-color:var(--measured)}
.live-changes h3{font:600 .9rem/1.4 var(--sans);margin:0}
.live-changes ul{list-style:none;padding:0;margin:.3rem 0 0}
.live-changes li{display:flex;justify-content:space-between;align-items:center;gap:.7rem;margin:.25rem 0}
.live-changes li button{flex:none}
.live-fold,.live-form{border-bottom:1px solid color-mix(in srgb,var(--rule) 60%,transparent)}
.live-panel summary{font:1rem/1.4 var(--sans);color:var(--ink);width:auto;min-height:2.75rem;padding:.65rem .2rem;display:flex;gap:.6rem;align-items:baseline;list-style:none}
.live-panel summary::-webkit-details-marker{display:none}
.live-panel summary::before{content:"+";color:var(--quiet);width:.8rem;flex:none;font-weight:600}
.live-panel details[open]>summary::before{content:"\\2013"}
.live-panel summary small{color:var(--quiet);margin-left:auto}
.live-form>summary{font-size:.88rem;color:var(--quiet)}
.live-inside{padding:0 0 .7rem .75rem;margin-left:.35rem;border-left:1px solid var(--rule)}
.live-line{display:grid;grid-template-columns:minmax(6rem,2fr) 3fr;gap:.2rem .7rem;align-items:center;padding:.2rem 0}
.live-line>label{overflow-wrap:anywhere}
.live-line>:is(.live-told,.live-actions,.live-try){grid-column:1/-1;margin:.1rem 0 .3rem}
.live-furniture .live-on-focus{display:none}
.live-furniture .live-line:focus-within>.live-on-focus{display:flex;margin-top:.1rem}
.live-again{position:relative}
.live-again>button{position:absolute;inset:0 0 0 auto;max-width:50%;overflow:hidden;text-overflow:ellipsis;white-space:nowrap}
.live-again>input:not(:placeholder-shown)+button{display:none}
.live-remove{margin-top:.5rem}
.live-wide{overflow-x:auto;margin:.3rem 0}
.live-rows table{font-size:.85rem}
.live-rows :is(td,th){padding:.12rem .25rem .12rem 0;white-space:nowrap}
.live-rows :is(td,th) input{width:auto;min-width:100%}
.live-rows tbody tr{border-bottom:0}
.live-rows thead th{font-weight:600;padding-right:.6rem}
.live-new th{color:var(--quiet)}
.live-x{min-width:2.75rem;padding:0}
@media (min-width:1000px){.live-panel{inset:0 0 0 auto;width:min(27rem,40vw);height:auto;border-top:0;border-left:1px solid var(--ink);box-shadow:none;z-index:5}
.live-beside body{margin-right:calc(min(27rem,40vw) + 1rem)}
.live-beside .live-bar{right:min(27rem,40vw);padding-inline:1.25rem}
.live-beside .live-notices{right:min(27rem,40vw);padding-inline:1.25rem}
.live-beside .scroll{max-width:100%}}
@media (max-width:480px){.live-ribbon{position:static}
.live-line{grid-template-columns:1fr}
.live-buttons{gap:.35rem}
.live-state{order:5;flex-basis:100%;text-align:left}
.live-buttons .live-main{margin-left:auto}
.live-buttons button{padding:.3rem .55rem}}
@media screen and (max-width:700px){.live-on .scroll th:first-child{position:sticky;left:0;z-index:1;background:var(--paper)}}`;

/** Where a mouse is at hand. */
const DESK = `@media (hover:hover) and (pointer:fine){.live-furniture :is(button,input){min-height:2.1rem;padding:.15rem .6rem}
.live-panel summary{min-height:2.2rem;padding:.4rem .2rem}
.live-x{min-width:2.1rem}}`;

const MOTION = `@media (prefers-reduced-motion:no-preference){.at{transition:text-decoration-color .15s}}`;

/** On paper the page as it is written; that a figure is tried is told there too. */
const PAPER = `@media print{.live,.live-furniture,.live-notice,.live-faulty{display:none!important}
:focus-visible{outline:0}
.live-ribbon:not([hidden]){display:block!important;position:static;margin:0 0 1rem}
.at,.at.live-changed{text-decoration:none;font-weight:inherit;padding:0;margin:0}
td:has(>.live-changed),th:has(>.live-changed){box-shadow:none}
.live-on body{padding-bottom:0}
.live-beside body{margin-right:auto}}`;

/** Comes after the page's own style sheet. */
export function liveStyle(): string {
  return [CELLS, FIELDS, INVITATION, EDITOR, BAR, PANEL, DESK, MOTION, PAPER].join("\n");
}
