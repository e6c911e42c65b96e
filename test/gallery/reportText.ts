/** A report's HTML as text that can be read line by line: one block or row a line, drawings by what they say to a screen reader. */

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
const decoded = (text: string): string => text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ENTITIES[name]!);

/** What a drawing says; nothing for decoration. */
function drawingText(svg: string): string {
  const said = /aria-label="([^"]*)"/.exec(svg)?.[1];
  return said === undefined ? '' : `\n(drawing) ${said}\n`;
}

export function textOfHtml(html: string): string {
  const body = /<body[^>]*>([\s\S]*)<\/body>/.exec(html)![1]!;
  const lines = body
    .replace(/<svg[\s\S]*?<\/svg>/g, drawingText)
    .replace(/<\/h2>/g, '\n')
    .replace(/<h2[^>]*>/g, '\n## ')
    .replace(/<h3[^>]*>/g, '\n### ')
    .replace(/<li>/g, '- ')
    .replace(/<\/(?:p|li|h1|h3|tr|caption|figcaption|header|blockquote)>/g, '\n')
    .replace(/<\/span><span/g, ' · <span')
    .replace(/<\/t[hd]>(?=<t[hd])/g, ' | ')
    .replace(/<[^>]+>/g, '');
  return `${decoded(lines)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('\n')}\n`;
}
