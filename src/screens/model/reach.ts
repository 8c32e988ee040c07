const OWN = /^(localhost|.*\.localhost|127(\.\d+){3}|\[?::1\]?|0\.0\.0\.0)$/;
/** Private networks (RFC 1918), link-local addresses (RFC 3927) and names of the local network (RFC 6762). */
const NEAR = /^(10(\.\d+){3}|192\.168(\.\d+){2}|172\.(1[6-9]|2\d|3[01])(\.\d+){2}|169\.254(\.\d+){2}|.*\.local)$/;

/** Who can reach the address this app was opened from: a link made here leads to the same address. */
export function reachOf(hostname: string): 'this-computer' | 'this-network' | 'anywhere' {
  if (OWN.test(hostname)) return 'this-computer';
  return NEAR.test(hostname) ? 'this-network' : 'anywhere';
}
