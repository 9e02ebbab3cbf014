// A page on paper, A4 or Letter: the whole width, everything opened but the data of charts, nothing torn apart.

export const PRINT_STYLE = `@page{margin:16mm 16mm 18mm}
@page{@bottom-right{content:counter(page) " / " counter(pages);font:8pt sans-serif;color:#333}}
@media print{html{font-size:10pt;line-height:1.42}
:root{--prose:none}
body{max-width:none;padding:0}
section{margin-top:1.5rem;padding-top:.8rem}
h1,h2,summary,caption,p:has(+:is(ul,ol,pre)),p:has(>strong:only-child){break-after:avoid}
h2+p{break-after:avoid-page;break-inside:avoid}
section:not(.sources)>:is(ul,ol)>li:is(:nth-child(2),:last-child){break-before:avoid-page}
p,li{orphans:3;widows:3}
figure,pre,.caution,.finding,.figures,tr,.issues li,section.next{break-inside:avoid}
.answer,.question{max-width:none}
.answer{font-size:1rem}
main:has(~footer)>section.files:last-child{break-inside:avoid}
footer{margin-top:.8rem;padding-top:.4rem;break-before:avoid-page;break-inside:avoid}
.figure{font-size:1.2rem}
.fold:not(:has(.finding,table.long)){break-inside:avoid}
.fold,.chart-data{margin-bottom:.8rem}
.sources :is(ul,ol){columns:2;column-gap:2rem;max-width:none}
.sources li{break-inside:avoid;font-size:.82rem;line-height:1.35;margin:.1rem 0}
.cautions:has(.caution+.caution){columns:2;column-gap:.8rem}
.cautions>:is(h2,p){column-span:all;max-width:none}
.caution{padding:.4rem .8rem;margin:0 0 .6rem;font-size:.92em;line-height:1.35}
.title-block{grid-template-columns:repeat(3,1fr);padding:.4rem 0;margin-bottom:.7rem}
.figures{gap:.5rem 1.6rem;margin:.6rem 0}
.figures>div{flex:1 1 8rem}
.figures .figure{white-space:nowrap}
.caution :is(p,ul){margin-bottom:.25rem}
.caution li{margin:.1rem 0}
.finding{grid-template-columns:6.2rem 1fr;margin-bottom:.5rem;max-width:none}
.finding p{max-width:none}
.finding :is(summary,.source){display:none}
.finding details :is(ul,p){margin:.05rem 0}
.finding ul{max-width:none;font-size:.85rem;line-height:1.35}
.finding ul:has(li+li){columns:2;column-gap:1.6rem}
.finding li{break-inside:avoid;margin:.1rem 0}
details.chart-data:not([open]),details.screen,figure.screen,figure.screen+.chart-data{display:none}
.own-sheet{break-before:page;break-after:page;break-inside:avoid;border:0;padding:0}
section:has(>h2+.own-sheet){break-before:page}
h2+.own-sheet{break-before:avoid}
table{break-inside:avoid;font-size:.8rem;line-height:1.3}
table.long{break-inside:auto}
thead{display:table-header-group}
tfoot{display:table-row-group}
figcaption{break-before:avoid;max-width:none}
figure svg,.wide svg{max-width:none;width:88%;max-height:185mm}
figure{margin:.8rem 0 .4rem}
.chart-data>summary{display:none}
.chart-data table{font-size:.72rem;line-height:1.25}
.chart-data th,.chart-data td{padding:.1rem .7rem .1rem 0}
.scroll{overflow:visible;background:none;width:auto;max-width:none}
caption>span{position:static;width:auto;max-width:none}
details::details-content{content-visibility:visible;display:block;block-size:auto}
summary{list-style:none}
summary::-webkit-details-marker{display:none}
a{color:inherit;text-decoration:none}}`;
