/** Keys that go up and down a column of fields, as on squared paper: arrows, and Enter for the next row. */

/** Moves the focus to the field of the same column one row up or down; leaving a field takes what was typed in it. */
export function stepInColumn(event: KeyboardEvent): void {
  const by = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' || event.key === 'Enter' ? 1 : 0;
  const field = event.target;
  if (by === 0 || event.isComposing || event.altKey || event.ctrlKey || event.metaKey) return;
  if (!(field instanceof HTMLInputElement) || (field.list !== null && event.key !== 'Enter')) return;
  const fields = columnOf(field);
  const next = fields[fields.indexOf(field) + by];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
  next.select();
}

/** The fields of one column in the grid that a field stands in, from the top; itself alone outside a grid. */
function columnOf(field: HTMLInputElement): HTMLInputElement[] {
  const grid = field.closest('[data-grid]');
  const column = field.dataset.column ?? '';
  if (grid === null) return [field];
  return [...grid.querySelectorAll<HTMLInputElement>('input[data-column]')].filter(
    (each) => each.dataset.column === column,
  );
}
