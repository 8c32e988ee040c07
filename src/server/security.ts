/**
 * The content security policy of the app: everything from this origin, nothing from anywhere else.
 * `inMeta` leaves out directives that a page's own meta tag may not set.
 */
export function contentSecurityPolicy({ inMeta }: { inMeta: boolean }): string {
  const directives = [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self' blob: data:",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ];
  if (!inMeta) directives.push("frame-ancestors 'none'");
  return directives.join('; ');
}

/** Headers for every answer. Any other host of the `dist` folder does well to send the same. */
export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentSecurityPolicy({ inMeta: false }),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(self), geolocation=(), microphone=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

const FOREVER = 'public, max-age=31536000, immutable';

/** Files under `assets/` carry a hash in their name and never change; all others are asked for again each time. */
export function cacheControl(path: string): string {
  return path.startsWith('assets/') ? FOREVER : 'no-cache';
}
