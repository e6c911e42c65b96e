import type { BenchMiddleware } from './bench.ts';

/** Nothing from elsewhere is loaded, run, framed or sent to; pictures may be made on the spot. */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "worker-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

/** What of the device the page may use: the camera for photos, and to keep the screen lit while hands are busy. */
const PERMISSIONS_POLICY = [
  'camera=(self)',
  'screen-wake-lock=(self)',
  'microphone=()',
  'geolocation=()',
  'display-capture=()',
  'payment=()',
  'usb=()',
  'midi=()',
  'accelerometer=()',
  'gyroscope=()',
  'magnetometer=()',
].join(', ');

export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'permissions-policy': PERMISSIONS_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};

/** Puts the security headers on every answer, refusals included. */
export function securityHeaders(): BenchMiddleware {
  return async (c, next) => {
    await next();
    for (const [name, value] of Object.entries(SECURITY_HEADERS)) c.res.headers.set(name, value);
  };
}
