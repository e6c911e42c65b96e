/**
 * What the tests need and this computer does not have, each as one sentence. `failed`: how many failures that counts
 * as here, beside those of the tests that do run.
 */
export function whatIsMissing({ chromium, postgres }, env = process.env) {
  const missing = [];
  if (chromium === null)
    missing.push({
      failed: 1,
      sentence:
        'Chromium was not found, so the page is not tested, which counts as one failed: install it, or set CHROME_PATH to where it is.',
    });
  // A build machine that lost its database must not turn green by leaving tests out; those tests then fail by themselves.
  const fate = env.CI ? 'the tests of the shelf in a database fail' : 'the shelf in a database is not tested';
  if (postgres === null)
    missing.push({
      failed: 0,
      sentence: `PostgreSQL was not found, so ${fate}: install it, or set CUPEL_POSTGRES_BIN to the folder of initdb and postgres.`,
    });
  return missing;
}
