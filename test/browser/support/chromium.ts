import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

/**
 * Parts of Chromium that no test looks at. The lists under its address bar are drawn ahead for every page that is opened, and take
 * twice what the page itself takes. The rest is what the driver turns off anyway: the last such switch is the one that counts.
 */
const LEFT_OUT = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
];

const ARGUMENTS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${LEFT_OUT.join(',')}`,
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
