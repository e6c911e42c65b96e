import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const ARGUMENTS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Places where a Chromium usually lies; CHROME_PATH comes first. */
const USUAL_PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

let running: Promise<Browser> | null = null;

/** The one Chromium of this process: started when it is first asked for, or after it broke, and ended with the process. */
export async function theChromium(): Promise<Browser> {
  const browser = await running;
  if (browser?.isConnected()) return browser;
  running = chromium.launch({ executablePath: chromiumPath(), args: ARGUMENTS });
  return running;
}

function chromiumPath(): string {
  const found = [process.env.CHROME_PATH ?? '', ...USUAL_PLACES].find((path) => path !== '' && existsSync(path));
  if (found === undefined) throw new Error('No Chromium was found; name one in CHROME_PATH.');
  return found;
}
