/** True when somebody asked for the inner workings of an error to be shown. */
export function debugging(): boolean {
  return process.env.CUPEL_DEBUG === '1';
}
