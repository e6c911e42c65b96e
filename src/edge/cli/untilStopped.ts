const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
/** How often a bench that was started through npm looks whether npm is still there, ms. */
const LOOK_EVERY_MS = 500;

/**
 * Resolves at the first polite request to stop. A bench that was started through `npm start` also stops when npm is
 * gone: npm, told to stop, does not always pass the word on, and a bench that nobody can see would keep the port.
 */
export function untilStopped(env: NodeJS.ProcessEnv = process.env): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of SIGNALS) process.once(signal, () => resolve());
    if (env.npm_lifecycle_event === undefined) return;
    const parent = process.ppid;
    const looking = setInterval(() => {
      if (process.ppid === parent) return;
      clearInterval(looking);
      resolve();
    }, LOOK_EVERY_MS);
    looking.unref();
  });
}
