import { greyClasses, greysOf } from './greys';

/** Tokens of the page that a file carries along: it has nothing beside it. */
const DAY = `--sheet:#f8f2e4;--raised:#fffbf1;--rule:#cdbf9f;--edge:#857a63;--text:#152035;--quiet:#555d6c;--vermilion:#b32d14;${greysOf('day')}`;
const NIGHT = `--sheet:#14233b;--raised:#1c2f4c;--rule:#33486a;--edge:#7387a8;--text:#f1e8d6;--quiet:#b3b6b8;--vermilion:#ff7759;${greysOf('night')}`;

/** The style of a crew sheet as one file: both themes, a phone first, ink on white where it is printed. */
export const STYLE = `
:root{color-scheme:light dark;${DAY}}
@media (prefers-color-scheme:dark){:root{${NIGHT}}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;scroll-padding-top:64px}
body{margin:0;background:var(--sheet);color:var(--text);font:400 17px/24px "Encode Sans",system-ui,"Noto Sans",sans-serif;font-variant-numeric:tabular-nums lining-nums;overflow-wrap:anywhere}
header,main,footer{max-width:1080px;margin:0 auto;padding:0 16px}
header{padding-top:20px}
h1{margin:0;font-size:26px;line-height:32px;font-weight:600}
h2{margin:36px 0 8px;padding-top:12px;border-top:2px solid var(--text);font-size:20px;line-height:26px;font-weight:600}
h3{margin:16px 0 6px;font-size:17px;line-height:24px;font-weight:600}
h4{margin:14px 0 4px;font-size:15px;line-height:20px;font-weight:600}
p{margin:4px 0;max-width:72ch}
a{color:inherit}
.whole{white-space:nowrap}
.quiet{color:var(--quiet)}
.strong{font-weight:600}
.notes{white-space:pre-line}
.in{margin-left:12px;font-size:15px;line-height:20px}
nav{position:sticky;top:0;z-index:1;margin-top:12px;background:var(--sheet);border-block:1px solid var(--rule)}
nav ul{display:flex;gap:4px;max-width:1080px;margin:0 auto;padding:0 12px;overflow-x:auto;list-style:none}
nav a{display:flex;align-items:center;min-height:48px;padding:0 8px;white-space:nowrap;font-weight:500;font-size:15px;text-decoration:none}
a:focus-visible,summary:focus-visible{outline:2px solid var(--text);outline-offset:2px}
nav a:focus-visible{outline-offset:-4px}
.times{display:flex;flex-wrap:wrap;gap:4px 24px;margin:10px 0 0}
.times dt{color:var(--quiet);font-size:15px;line-height:20px}
.times dd{margin:0;font-size:22px;line-height:28px;font-weight:500}
.setups{display:grid;gap:24px;grid-template-columns:minmax(0,1fr)}
.setup{border-top:1px solid var(--rule);padding-top:12px;min-width:0}
.setup .name{display:flex;gap:12px;align-items:baseline;margin:0 0 8px;font-size:19px;line-height:26px;font-weight:600}
.setup .letter{font-size:32px;line-height:36px}
.setup .clock{margin-left:auto;font-weight:400;color:var(--quiet);white-space:nowrap;font-size:15px}
.setup img{display:block;width:100%;height:auto;background:#000}
.setup .none{padding:24px 12px;border:1px dashed var(--edge);color:var(--quiet)}
details{border-top:1px solid var(--rule)}
summary{display:flex;align-items:center;gap:8px;min-height:48px;cursor:pointer;font-weight:600}
summary::marker,summary::-webkit-details-marker{content:"";display:none}
summary::before{content:"";flex:none;width:8px;height:8px;margin:0 4px;border:solid var(--text);border-width:0 1.5px 1.5px 0;transform:rotate(-45deg)}
details[open]>summary::before{transform:rotate(45deg)}
summary .aside{margin-left:auto;font-weight:400;color:var(--quiet);font-size:15px;text-align:right}
.standing{columns:1;column-gap:32px}
.standing details{break-inside:avoid}
.standing dl{display:grid;grid-template-columns:minmax(5em,auto) 1fr;gap:2px 12px;margin:0 0 12px}
.standing dt{color:var(--quiet)}
.standing dd{margin:0}
.roof{overflow:auto;border:1px solid var(--rule)}
.roof svg{display:block;min-width:760px;width:100%;height:auto}
.roof .f{fill:none}
.t{paint-order:stroke;stroke:var(--g20);stroke-width:2.4px;stroke-linejoin:round;font-family:inherit}
${greyClasses()}
table{width:100%;margin:6px 0 12px;border-collapse:collapse;font-size:15px;line-height:20px}
th,td{padding:6px 8px 6px 0;border-bottom:1px solid var(--rule);text-align:left;vertical-align:top;font-weight:400}
thead th{color:var(--quiet)}
tbody th{font-weight:500}
.r{text-align:right;white-space:nowrap}
.link{display:flex;flex-wrap:wrap;gap:16px 24px;align-items:flex-start}
.link .code{width:min(320px,100%);flex:none}
.link div{flex:1 1 260px;min-width:0}
.address{font-size:11px;line-height:14px;color:var(--quiet);word-break:break-all}
footer{padding-block:24px 40px;color:var(--quiet);font-size:15px;line-height:20px}
@media (min-width:900px){.setups{grid-template-columns:repeat(2,minmax(0,1fr))}.standing{columns:2}}
@media (max-width:639px){
table,tbody,tr,tbody th,td{display:block;border:0;padding:0;text-align:left}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tr{padding:8px 0;border-bottom:1px solid var(--rule)}
td:empty{display:none}
td,tbody th[data-name]{display:flex;gap:12px;justify-content:space-between;white-space:normal}
td::before,th[data-name]::before{font-weight:400;content:attr(data-name);flex:none;max-width:45%;color:var(--quiet)}
tbody th{font-weight:600}
}
@media (prefers-reduced-motion:no-preference){html{scroll-behavior:smooth}}
@media print{:root{${DAY};--sheet:#fff;--g20:#fff}nav{display:none}.setup,.standing details{break-inside:avoid}}
`.replaceAll('\n', '');
