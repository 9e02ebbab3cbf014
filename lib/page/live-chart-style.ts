// The look of what tells the figures of a chart: a ring and a label, in the colours of the note.

export const CHART_STYLE = `main figure{position:relative}
.live-reads{position:absolute;inset:0;pointer-events:none;z-index:2}
.live-ring,.live-label{position:absolute;top:0;left:0}
.live-ring{width:26px;height:26px;margin:-13px 0 0 -13px;border-radius:50%;outline:0}
.live-told-here>.live-ring{box-shadow:0 0 0 2px var(--paper),0 0 0 4px var(--ink),inset 0 0 0 1px var(--paper)}
.live-told-here>.live-ring:focus-visible{box-shadow:0 0 0 2px var(--paper),0 0 0 5px var(--fitted),inset 0 0 0 1px var(--paper)}
.live-label{width:max-content;max-width:min(19rem,calc(100vw - 1rem));background:var(--paper);color:var(--ink);border:1px solid var(--ink);border-radius:3px;padding:.4rem .65rem;font:.82rem/1.45 var(--sans);font-variant-numeric:lining-nums tabular-nums;pointer-events:auto;box-shadow:0 5px 14px -8px color-mix(in srgb,var(--ink) 45%,transparent)}
.live-label p{margin:0;max-width:none;overflow-wrap:anywhere}
.live-leave{margin-top:.35rem;display:flex;flex-wrap:wrap;gap:.35rem;scroll-margin:1rem 0 calc(var(--bar,4.6rem) + 1rem)}
.live-leave input{flex:1 1 15rem;min-width:0}
.live-leave input,.live-leave button{font:inherit;color:var(--ink);background:var(--paper);border:1px solid var(--ink);border-radius:3px;padding:.3rem .6rem;min-height:2.2rem;max-width:100%}
.live-leave button{cursor:pointer}
.chart-data tbody tr.live-read{background:color-mix(in srgb,var(--band) 70%,transparent);box-shadow:inset 3px 0 0 var(--measured)}
.chart-data tbody tr:focus{outline:2px solid var(--fitted);outline-offset:-2px}
.wide>svg,.narrow>svg{touch-action:pan-x pan-y}`;
