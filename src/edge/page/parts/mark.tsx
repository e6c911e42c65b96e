/** The mark: a cut face of jacket, claim and copper. Decoration beside the word. */
export function Mark({ size = 28 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 26 26" aria-hidden="true" focusable="false">
      <circle cx="13" cy="13" r="13" fill="var(--ink)" />
      <circle cx="13" cy="13" r="9.6" fill="var(--ground)" />
      <circle cx="13" cy="13" r="7.7" fill="none" stroke="var(--ink)" stroke-width="1.4" stroke-dasharray="2.42 1.61" />
      <circle cx="13" cy="13" r="5.6" fill="var(--copper)" />
    </svg>
  );
}
