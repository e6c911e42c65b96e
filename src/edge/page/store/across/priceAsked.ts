/** `12.50` or `12,50`; null for nothing, NaN for what is no price: no number, or less than nothing. */
export function priceIn(text: string): number | null {
  const typed = text.trim().replace(',', '.');
  if (typed === '') return null;
  const price = Number(typed);
  return Number.isFinite(price) && price >= 0 ? price : Number.NaN;
}

/** What is wrong with a price as it was typed, as a sentence; null where nothing is. The higher end is named where both cross. */
export function priceTrouble(field: 'least' | 'most', typed: { least: string; most: string }): string | null {
  const price = priceIn(typed[field]);
  if (Number.isNaN(price)) return `Found “${typed[field].trim()}”; expected a price, such as 12.50.`;
  const [least, most] = [priceIn(typed.least), priceIn(typed.most)];
  if (field === 'least' || least === null || most === null || !(least > most)) return null;
  return `Found “${typed.most.trim()}”, which is below “${typed.least.trim()}”; expected the higher price here.`;
}
