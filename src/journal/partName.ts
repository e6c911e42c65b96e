/** Most characters of a part's name: it stands in headings, file names and sentences. The project's own choice. */
export const LONGEST_PART_NAME = 40;

/** Begins with a letter or digit of any script, ends in no space. */
const PART_NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}._ -]*$/u;

/** What a part may be called, as it is said wherever a name is refused. */
export const PART_NAME_RULE = `a name of 1 to ${LONGEST_PART_NAME} characters: letters, digits, space, full stop, hyphen and underscore, a letter or digit first`;

/**
 * Whether a part that is sealed from now on may have that name. Parts that were sealed under other names keep them.
 *
 * @param name without spaces round it
 */
export function isPartName(name: string): boolean {
  return [...name].length <= LONGEST_PART_NAME && name === name.trim() && PART_NAME.test(name);
}
