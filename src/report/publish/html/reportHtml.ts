import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { escapeText } from '../../svg.ts';
import { noBreak } from '../../words/noBreak.ts';
import { type Block, type Cell, cellText, type ReportDocument, type Section } from '../document/blocks.ts';
import { datasetJsonLd, scriptJson } from './jsonLd.ts';
import { type EmbeddedFont, fontFaces, REPORT_STYLE } from './style.ts';

export interface HtmlOptions {
  /** Fonts that travel inside the file; without them the reader's own sans serif is used. */
  fonts?: readonly EmbeddedFont[];
}

/** Text that a person may have typed: escaped, its own direction kept to itself. */
const text = (typed: string): string => escapeText(noBreak(typed));

function cell(content: Cell): string {
  if (typeof content === 'string') return text(content);
  return `<b>${text(content.value)}</b>${content.after === '' ? '' : `<span>${text(content.after)}</span>`}`;
}

/** A column with a cell of so many characters is never squeezed to single words. */
const LONG_CELL = 48;

function table({ head, sides, rows, caption }: Extract<Block, { kind: 'table' }>): string {
  const long = head.map((_, i) => rows.some((row) => cellText(row[i] ?? '').length >= LONG_CELL));
  const side = (i: number) => (sides[i] === 'right' ? ' class="right"' : '');
  const wide = (i: number) => (long[i] && side(i) === '' ? ' class="long"' : side(i));
  const named = head.some((title) => title !== '');
  const heads = named
    ? `<thead><tr>${head.map((title, i) => `<th scope="col"${side(i)}>${text(title)}</th>`).join('')}</tr></thead>`
    : '';
  const body = rows
    .map((row) => {
      const cells = row.map((content, i) =>
        i === 0 ? `<th scope="row"><bdi>${cell(content)}</bdi></th>` : `<td${wide(i)}>${cell(content)}</td>`,
      );
      return `<tr>${cells.join('')}</tr>`;
    })
    .join('\n');
  return `<div class="scroll" tabindex="0" role="group" aria-label="${text(caption)}"><table><caption>${text(caption)}</caption>${heads}<tbody>${body}</tbody></table></div>`;
}

function block(one: Block): string {
  switch (one.kind) {
    case 'paragraph':
      return `<p${one.quiet ? ' class="quiet"' : ''}>${text(one.text)}</p>`;
    case 'heading':
      return `<h3><bdi>${text(one.text)}</bdi></h3>`;
    case 'list':
      return `<ul>${one.items.map((item) => `<li>${text(item)}</li>`).join('')}</ul>`;
    case 'picture':
      return `<figure><div class="scroll" tabindex="0" role="group" aria-label="Drawing">${one.svg}</div><figcaption>${text(one.caption)}</figcaption></figure>`;
    case 'quote':
      return `<blockquote><p><bdi>${text(one.text)}</bdi></p></blockquote><p class="quiet"><bdi>${text(one.by)}</bdi></p>`;
    case 'writing':
      return `<p class="quiet">${text(one.label)}</p><div class="writing" aria-hidden="true">${'<div></div>'.repeat(one.lines)}</div>`;
    case 'table':
      return table(one);
  }
}

function section({ id, title, blocks }: Section): string {
  return `<section id="${escapeText(id)}" aria-labelledby="${escapeText(id)}-title"><h2 id="${escapeText(id)}-title">${text(title)}</h2>${blocks.map(block).join('\n')}</section>`;
}

/** The hash by which the file allows its own style sheet and nothing else. */
const sha256Base64 = (content: string): string => btoa(String.fromCharCode(...sha256(utf8ToBytes(content))));

/** The mark: jacket, claim, copper. Decoration beside the word. */
const MARK =
  '<svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true" focusable="false"><circle cx="13" cy="13" r="13" fill="#15191A"/><circle cx="13" cy="13" r="9.6" fill="#FFFFFF"/><circle cx="13" cy="13" r="7.7" fill="none" stroke="#15191A" stroke-width="1.4" stroke-dasharray="2.42 1.61"/><circle cx="13" cy="13" r="5.6" fill="#B4623A"/></svg>';

/** What a report says, without the file round it: title, summary, contents, sections. */
export function reportBody({ title, lead, sections }: ReportDocument): string {
  const contents = sections.map(({ id, title: t }) => `<li><a href="#${escapeText(id)}">${text(t)}</a></li>`).join('');
  return `<h1><bdi>${text(title)}</bdi></h1>
<p class="lead">${text(lead)}</p>
<nav aria-label="Contents"><ol>${contents}</ol></nav>
${sections.map(section).join('\n')}`;
}

/**
 * A report as one file that needs nothing else: no network, no script that runs; fonts and drawings inside, the data described as
 * a schema.org Dataset. Prints on A4 or Letter.
 */
export function reportHtml(document: ReportDocument, { fonts = [] }: HtmlOptions = {}): string {
  const { title, lead, partLine, foot, licence, dataset, tight = false } = document;
  const style = `\n${fontFaces(fonts)}\n${REPORT_STYLE}\n`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${sha256Base64(style)}'; font-src data:; img-src data:">
<meta name="description" content="${text(lead)}">
<title>${text(title)}</title>
<style>${style}</style>
<script type="application/ld+json">${scriptJson(datasetJsonLd(dataset, licence))}</script>
</head>
<body${tight ? ' class="tight"' : ''}>
<header class="top"><span class="mark">${MARK}<span class="wordmark">Cupel</span></span><span class="quiet">${text(partLine)}</span></header>
<main>
${reportBody(document)}
</main>
<footer><p>${text(foot)} · <a href="${escapeText(licence.address)}">${text(licence.name)}</a></p></footer>
</body>
</html>
`;
}
