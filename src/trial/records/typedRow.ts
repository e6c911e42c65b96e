/** A row as typed, with the entry it came from. */
export interface TypedRow {
  entry: string;
  row: Readonly<Record<string, string>>;
}
