/** Words that people type for an option which is called otherwise, by command. */
const OTHER_WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  run: {
    '--volts': '--supply',
    '--voltage': '--supply',
    '--battery': '--supply',
    '--amps': '--load',
    '--current': '--load',
    '--watts': '--load',
    '--power': '--load',
    '--temperature': '--ambient',
  },
};

/** The option of a command that an unknown one, such as `--volts` or `--volts=12`, stands for; null where none is known. */
export function meantOption(command: string, typed: string): string | null {
  const [word = ''] = typed.toLowerCase().split('=');
  const words = OTHER_WORDS[command];
  return words !== undefined && Object.hasOwn(words, word) ? words[word]! : null;
}
