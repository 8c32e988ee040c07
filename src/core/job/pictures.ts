/** The hashes entries name, whatever their kind and whether or not they can be read otherwise. */
export function picturesOf(raws: readonly unknown[]): Set<string> {
  const found = new Set<string>();
  for (const raw of raws) {
    const sha256: unknown = Reflect.get(Object(Reflect.get(Object(raw), 'payload')), 'sha256');
    if (typeof sha256 === 'string') found.add(sha256);
  }
  return found;
}
