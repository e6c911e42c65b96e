/** What is said of something that was thrown: its message, which every error of ours has for the person. */
export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
