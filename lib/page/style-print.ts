// A page on paper, A4 or Letter: the whole width, everything opened but the data of charts, nothing torn apart.

export const PRINT_STYLE = `@page{margin:16mm 16mm 18mm}
@page{@bottom-right{content:counter(page) " / " counter(pages);font:8pt sans-serif;color:#333}}
@media print{html{font-size:10pt;line-height:1.42}
:root{--prose:none}
body{max-width:none;padding:0}
section{margin-top:1.5rem;padding-top:.8rem}
h1,h2,summary,caption,.tone{break-after:avoid}
p,li{orphans:3;widows:3}
figure,.caution,.finding,.figures,tr,.issues li,section.next,section.sources{break-inside:avoid}
.answer,.question{max-width:36rem}
.caution ul,.sources ul{columns:2;column-gap:2rem}
.caution li,.sources li{break-inside:avoid}
.finding{grid-template-columns:5.4rem 1fr;margin-bottom:.7rem}
.finding summary{font-size:.75rem;padding:0}
.finding details :is(ul,p){margin:.05rem 0}
details.chart-data:not([open]){display:none}
table{break-inside:avoid;font-size:.8rem;line-height:1.3}
table.long{break-inside:auto}
thead{display:table-header-group}
tfoot{display:table-row-group}
figcaption{break-before:avoid;max-width:none}
figure svg,.wide svg{max-width:none;max-height:185mm}
.chart-data>summary{display:none}
.chart-data table{font-size:.72rem;line-height:1.25}
.chart-data th,.chart-data td{padding:.1rem .7rem .1rem 0}
.scroll{overflow:visible;background:none;width:auto;max-width:none}
caption>span{position:static;width:auto;max-width:none}
details::details-content{content-visibility:visible;display:block;block-size:auto}
summary{list-style:none}
summary::-webkit-details-marker{display:none}
a{color:inherit;text-decoration:none}}`;
