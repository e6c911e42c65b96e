import { paperTheme } from '../../theme.ts';

/** A font that travels inside the file. */
export interface EmbeddedFont {
  family: 'Source Sans 3' | 'Besley';
  weight: 400 | 600 | 700;
  /** woff2 in base 64. */
  data: string;
  /** Characters that it holds, as a style sheet's unicode-range; all when left out. */
  range?: string;
}

/** What the font files for Latin and for Greek letters hold, as the style sheets say that come with them. */
export const FONT_RANGES = {
  latin:
    'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD',
  greek: 'U+0370-0377,U+037A-037F,U+0384-038A,U+038C,U+038E-03A1,U+03A3-03FF',
} as const;

export function fontFaces(fonts: readonly EmbeddedFont[]): string {
  return fonts
    .map(
      ({ family, weight, data, range }) =>
        `@font-face{font-family:'${family}';font-style:normal;font-weight:${weight};font-display:swap;src:url(data:font/woff2;base64,${data}) format('woff2')${range ? `;unicode-range:${range}` : ''}}`,
    )
    .join('\n');
}

const { ink, ink2, rule, edge, ground } = paperTheme;

/** The look of the report on screen and on paper: white ground, rules and space, no boxes. */
export const REPORT_STYLE = `
:root{color-scheme:light}
*{box-sizing:border-box}
body{margin:0 auto;padding:40px 24px 64px;max-width:840px;background:${ground};color:${ink};font:15px/22px 'Source Sans 3','Source Sans Pro',system-ui,sans-serif;font-variant-numeric:tabular-nums;overflow-wrap:anywhere}
h1,.wordmark,.lead-name{font-family:Besley,'Source Sans 3',serif;font-weight:600}
h1{font-size:34px;line-height:40px;margin:24px 0 12px}
h2{font:600 20px/26px 'Source Sans 3',system-ui,sans-serif;margin:40px 0 12px;padding-top:12px;border-top:2px solid ${ink};break-after:avoid}
h3{font:600 17px/23px Besley,'Source Sans 3',serif;margin:28px 0 8px;break-after:avoid}
p{margin:0 0 12px}
.lead{font-size:18px;line-height:26px;max-width:38em}
header.top{display:flex;justify-content:space-between;align-items:center;gap:16px;border-bottom:1px solid ${ink};padding-bottom:8px}
.mark{display:flex;flex:none;align-items:center;gap:8px}
p,ul{max-width:44em}
.quiet,figcaption,caption,footer{color:${ink2};font-size:13px;line-height:18px}
nav ol{columns:2;padding-left:20px;margin:0 0 24px}
a{color:${ink};text-underline-offset:3px}
a:focus-visible{outline:3px solid ${ink};outline-offset:3px}
figure{margin:20px 0;break-inside:avoid}
figure svg{display:block;max-width:100%;height:auto}
figcaption{margin-top:8px}
.scroll{overflow-x:auto;margin:16px 0}
.scroll:focus-visible{outline:3px solid ${ink};outline-offset:3px}
figure .scroll{margin:0}
table{border-collapse:collapse;width:100%}
caption{caption-side:bottom;text-align:left;padding-top:8px}
th{font-weight:400;color:${ink2};font-size:13px;line-height:18px;text-align:left;vertical-align:bottom;border-bottom:1px solid ${ink}}
th,td{padding:6px 12px 6px 0}
th:last-child,td:last-child{padding-right:0}
tbody th{vertical-align:top;color:${ink};font-size:15px;font-weight:600;border-bottom:1px solid ${rule}}
td{border-bottom:1px solid ${rule};vertical-align:top}
.right{text-align:right;white-space:nowrap;overflow-wrap:normal}
thead th{overflow-wrap:normal;white-space:normal}
tbody th{min-width:7em}
td:not(.right){min-width:7em}
td.long{min-width:17em}
b{font-weight:600}
td span{color:${ink2}}
ul{padding-left:20px;margin:0 0 12px}
li{margin-bottom:4px}
blockquote{margin:12px 0;padding-left:16px;border-left:2px solid ${edge};white-space:pre-wrap}
.writing div{height:32px;border-bottom:1px solid ${rule}}
footer{margin-top:48px;border-top:1px solid ${rule};padding-top:8px}
@media (max-width:640px){figure svg{max-width:none;width:500px}body{padding:24px 16px 48px}h1{font-size:28px;line-height:34px}tbody th,td{font-size:14px;line-height:20px}}
@page{margin:15mm 18mm 14mm}
@media print{body{max-width:none;padding:0;font-size:9.5pt;line-height:13.5pt}nav{display:none}.scroll{overflow:visible;margin:8pt 0}thead{display:table-header-group}tr,figure,blockquote,li{break-inside:avoid}p,ul{max-width:none;margin-bottom:6pt}h2{font-size:14pt;line-height:17pt;margin:18pt 0 6pt;padding-top:6pt}h3{margin:12pt 0 4pt;font-size:11pt;line-height:14pt}figure{margin:10pt 0}th,td{padding:3pt 8pt 3pt 0}.right{white-space:normal}tbody th{min-width:6em}td:not(.right){min-width:3.5em}td.long{min-width:10em}h1{font-size:23pt;line-height:27pt}.lead{font-size:11.5pt;line-height:16pt}tbody th,td{font-size:9pt}.mark{display:flex;align-items:center;gap:8px}
p,ul{max-width:44em}
.quiet,figcaption,caption,th,footer{font-size:8.5pt;line-height:11.5pt}}
@media print{body.tight{font-size:8.5pt;line-height:11pt}.tight h1{font-size:16pt;line-height:19pt;margin:6pt 0 4pt}.tight .lead{font-size:9.5pt;line-height:12pt;max-width:none}.tight h2{font-size:11pt;line-height:13pt;margin:8pt 0 3pt;padding-top:3pt}.tight p,.tight ul{margin-bottom:3pt}.tight li{margin-bottom:1pt}.tight .scroll{margin:3pt 0}.tight th,.tight td{padding:1pt 8pt 1pt 0}.tight tbody th,.tight td,.tight th,.tight caption,.tight .quiet{font-size:8.5pt;line-height:10.5pt}.tight caption{padding-top:2pt}.tight table{break-inside:auto}}
`.trim();
