/** A text with its first letter as at the head of a sentence; the rest stays as it is: `at most 5 K` → `At most 5 K`. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
