import { qrModules, qrText } from '../server/share/qr.ts';
import type { OpenCode, Sharing } from '../server/share/sharing.ts';

/** A code in two halves, easier to read and to type: `K7M 3QX`. */
function inHalves(code: string): string {
  return `${code.slice(0, 3)} ${code.slice(3)}`;
}

const ROLE_WORDS = {
  keeper: 'do everything that this computer may',
  recorder: 'read and record',
  reader: 'read',
} as const;

/** What is printed while a code waits for a phone. `drawn`: with the QR code, on a screen and not into a file. */
export function sharingText(code: OpenCode, secure: boolean, drawn: boolean): string {
  const addresses = code.urls.map((url) => url.replace(/\/pair#.*$/, ''));
  const until = new Date(code.until).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  const advice = secure
    ? ''
    : 'Over plain http a phone records only while the page stays open on it: do not close it there (docs/add-a-phone.md).\n';
  return (
    `For phones on this network: ${addresses.join(' or ')}\n` +
    `Code ${inHalves(code.code)}: adds one phone, which may then ${ROLE_WORDS[code.role]}; until ${until}.\n` +
    (drawn ? qrText(qrModules(code.urls[0] ?? '')) : '') +
    advice
  );
}

/** Prints a new code each time that somebody presses Enter. Answers how to stop listening for that. */
export function newCodeOnEnter(sharing: Sharing, tell: (code: OpenCode) => void, role: OpenCode['role']): () => void {
  if (!process.stdin.isTTY) return () => {};
  const pressed = () => void sharing.open(role).then(tell, () => {});
  process.stdin.on('data', pressed);
  process.stdin.unref();
  process.stdout.write('Press Enter for a new code.\n');
  return () => {
    process.stdin.off('data', pressed);
    process.stdin.pause();
  };
}
