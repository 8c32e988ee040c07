/**
 * The content security policy of the app: everything from this origin, nothing from anywhere else.
 * `inMeta` leaves out directives that a page's own meta tag may not set.
 */
export function contentSecurityPolicy({ inMeta }: { inMeta: boolean }): string {
  const directives = [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
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
