/** Minutes as people say them: `40 min`, `1 h`, `6 h 34 min`. Whole minutes, and never none for work that takes some. */
export function minutesWords(minutes: number): string {
  const whole = minutes > 0 ? Math.max(1, Math.round(minutes)) : 0;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest}\u00a0min`;
  return rest === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h ${rest}\u00a0min`;
}
