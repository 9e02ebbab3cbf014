// A page on paper, A4 or Letter: everything opened, nothing torn apart.

export const PRINT_STYLE = `@page{margin:18mm 17mm 20mm}
@page{@bottom-right{content:counter(page) " / " counter(pages);font:8pt sans-serif;color:#333}}
@media print{html{font-size:10.5pt}
body{max-width:none;padding:0}
section{margin-top:1.8rem}
h1,h2,summary,caption,.tone{break-after:avoid}
p,li{orphans:3;widows:3}
figure,.caution,.finding,.figures,tr,.issues li{break-inside:avoid}
table{break-inside:avoid}
thead{display:table-header-group}
tfoot{display:table-row-group}
figcaption{break-before:avoid}
.chart-data>summary{display:none}
.chart-data table{font-size:.72rem;line-height:1.25}
.chart-data th,.chart-data td{padding-top:.1rem;padding-bottom:.1rem}
.scroll{overflow:visible}
caption>span{position:static}
details::details-content{content-visibility:visible;display:block;block-size:auto}
summary{list-style:none}
summary::-webkit-details-marker{display:none}
a{color:inherit;text-decoration:none}}`;
