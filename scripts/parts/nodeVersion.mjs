/** The oldest Node.js that Cupel runs on; `engines` in package.json says the same. */
const OLDEST = [20, 19];

/** A sentence when this Node.js is too old, otherwise null. */
export function nodeTooOld(version = process.versions.node) {
  const [major, minor] = version.split('.').map(Number);
  const newEnough = major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1]);
  return newEnough
    ? null
    : `Cupel needs Node.js ${OLDEST.join('.')} or newer and this is ${version}: install a newer one from nodejs.org and try again.`;
}
