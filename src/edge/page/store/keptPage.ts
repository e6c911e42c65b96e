/**
 * Has the browser keep the page itself, so that it opens without the bench computer. Browsers allow that on the bench
 * computer and over TLS only; over plain http from another computer the open page has to stay open.
 */
export function keepPage(): void {
  if (!isSecureContext || !('serviceWorker' in navigator)) return;
  // Where it fails, as in some private windows, everything else goes on as it did.
  navigator.serviceWorker.register('/sw.js').catch(() => {});
}
