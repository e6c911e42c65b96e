/** Names as nobody should give them and somebody will. */
export const HOSTILE_NAMES = {
  markup: '<script>alert(1)</script>',
  formula: '=HYPERLINK("http://x","y")',
  emoji: 'Cable 🔌⚡ one',
  rightToLeft: 'כבל נחושת 2',
  long: `${'Extraordinarily long name of a cable '.repeat(6)}`.slice(0, 200),
  oneWord: 'W'.repeat(200),
  typst: '#panic("x") \\ $x$ "',
  quotes: `O'Brien & "Sons" {{x}}`,
} as const;
