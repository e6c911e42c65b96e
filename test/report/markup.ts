/** Reads the SVG that the room writes, strictly enough that broken markup cannot pass. */

export interface Tag {
  name: string;
  attributes: Record<string, string>;
  /** Escaped text directly inside it. */
  text: string;
}

/** Every element in document order. Throws on markup that is not well formed: unknown entities, open tags, stray signs. */
export function tagsOf(markup: string): Tag[] {
  const tags: Tag[] = [];
  const open: Tag[] = [];
  const token = /<\/([a-z]+)>|<([a-z]+)((?: [a-zA-Z][\w:-]*="[^"<>]*")*)(\/?)>|([^<>]+)/gy;
  let at = 0;
  for (let match = token.exec(markup); match !== null; match = token.exec(markup)) {
    at = token.lastIndex;
    const [, closing, name, attributes = '', selfClosed, text] = match;
    if (text !== undefined) {
      const parent = open.at(-1);
      if (parent === undefined || /&(?!(amp|lt|gt|quot|#39);)/.test(text)) throw new Error(`stray text: ${text}`);
      parent.text += text;
    } else if (closing !== undefined) {
      if (open.pop()?.name !== closing) throw new Error(`</${closing}> closes something else`);
    } else {
      const tag: Tag = { name: name!, attributes: attributesOf(attributes), text: '' };
      tags.push(tag);
      if (selfClosed === '') open.push(tag);
    }
  }
  if (at !== markup.length) throw new Error(`not markup: ${markup.slice(at, at + 60)}`);
  if (open.length > 0) throw new Error(`${open.at(-1)!.name} stays open`);
  return tags;
}

export const named = (markup: string, name: string): Tag[] => tagsOf(markup).filter((tag) => tag.name === name);
export const numberOf = (tag: Tag, attribute: string): number => Number(tag.attributes[attribute]);

function attributesOf(text: string): Record<string, string> {
  const list: Record<string, string> = {};
  for (const [, key, value] of text.matchAll(/([a-zA-Z][\w:-]*)="([^"]*)"/g)) {
    if (/&(?!(amp|lt|gt|quot|#39);)/.test(value!)) throw new Error(`bad entity in ${key}`);
    if (key! in list) throw new Error(`${key} is given twice`);
    list[key!] = value!;
  }
  return list;
}
