/**
 * Parts of a page that come out of the program itself, so that they cannot drift from it. Each stands between two marks:
 *
 *     <!-- made: columns -->
 *     (written by `node scripts/docs.mjs`)
 *     <!-- end -->
 */
const BLOCK = /<!-- made: ([a-z0-9-]+) -->\n[\s\S]*?<!-- end -->/g;
const MARK = /<!-- made: ([a-z0-9-]+) -->/g;

/** What makes the text between the marks of that name. */
export type BlockMakers = Readonly<Record<string, () => string>>;

/** Names of the blocks that a page has, in order. */
export function blockNames(page: string): string[] {
  return [...page.matchAll(MARK)].map((match) => match[1]!);
}

/**
 * The page with every marked block made anew; all other text stays as it is.
 *
 * @throws RangeError for a block that nothing makes, and for a mark without an end.
 */
export function fillBlocks(page: string, makers: BlockMakers): string {
  let filled = 0;
  const made = page.replace(BLOCK, (_block, name: string) => {
    const maker = makers[name];
    if (maker === undefined) throw new RangeError(`nothing makes the block "${name}"`);
    filled++;
    return `<!-- made: ${name} -->\n${maker().trim()}\n<!-- end -->`;
  });
  const marks = blockNames(page).length;
  if (filled !== marks) throw new RangeError(`${marks} blocks begin and ${filled} end`);
  return made;
}
