// The look of a live page while it is being worked out, and of the line that invites to change it.

export const REDRAW_STYLE = `@media (scripting:none){.live{display:none}}
@media print{[data-live]{display:none!important}}
.live>p{font:.85rem/1.5 var(--sans);color:var(--quiet);max-width:none}
.live-notice{border:1px solid var(--rule);border-left:3px solid var(--measured);padding:.45rem .8rem;font-size:.9rem;margin:1.3rem 0;max-width:none}
.undrawable{border:1px dashed var(--rule);padding:.45rem .8rem;font-size:.9rem;margin:0;max-width:none}
[data-waiting]>:is(svg,.undrawable){visibility:hidden}
@media print{main[aria-busy=true]::before,[data-waiting]::before{font:.85rem/1.5 var(--sans);border:1px dashed var(--rule);padding:.45rem .8rem;display:block}
main[aria-busy=true]::before{content:"Printed while the page was being worked out: figures may be those of before the last change. Print it again."}
[data-waiting]>*{display:none}
[data-waiting]::before{content:"Printed while this chart was being drawn. Its figures are in the data under it; print the page again for the drawing."}}
@media screen{:is(header,main)[aria-busy=true]{opacity:.6;transition:opacity 0s .2s}
[data-waiting]{outline:1px dashed var(--rule);outline-offset:-1px;min-height:6rem}}`;
