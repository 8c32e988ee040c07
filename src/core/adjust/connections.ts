import { ix } from './array.ts';
import type { Problem } from './problem.ts';

/** Which points and readings touch which: by index of point, and of prepared reading. */
export interface Connections {
  readonly partners: readonly ReadonlySet<number>[];
  readonly partnerList: readonly (readonly number[])[];
  readonly readingsOf: readonly (readonly number[])[];
}

export function connections(problem: Problem): Connections {
  const count = problem.network.points.length;
  const partners: Set<number>[] = Array.from({ length: count }, () => new Set());
  const readingsOf: number[][] = Array.from({ length: count }, () => []);
  problem.prepared.forEach((p, i) => {
    const own = [...new Set(Array.from(p.refs, (o) => o / 3))];
    for (const a of own) {
      readingsOf[a]?.push(i);
      for (const b of own) if (a !== b) partners[a]?.add(b);
    }
  });
  // Known points hold together without a tape between them.
  const known = problem.network.points.flatMap((_, i) => (ix(problem.nodeOf, i) < 0 ? [i] : []));
  for (const a of known) for (const b of known) if (a !== b) partners[a]?.add(b);
  return { partners, partnerList: partners.map((s) => [...s]), readingsOf };
}

/** Connected groups of points once `removed` are taken away. */
function componentsWithout(links: Connections, removed: readonly number[]): number[][] {
  const seen = new Uint8Array(links.partners.length);
  for (const r of removed) seen[r] = 1;
  const groups: number[][] = [];
  for (let start = 0; start < seen.length; start++) {
    if (seen[start] === 1) continue;
    const group = [start];
    seen[start] = 1;
    for (let k = 0; k < group.length; k++) {
      for (const next of links.partnerList[group[k] ?? 0] ?? []) {
        if (seen[next] === 1) continue;
        seen[next] = 1;
        group.push(next);
      }
    }
    groups.push(group);
  }
  return groups;
}

/**
 * Groups that hang on the rest by only two points (plane) or three (space): each can be folded over the line or plane
 * of those. Separators are looked for among well-connected points only; others cannot carry a group of any size.
 */
export function hingedGroups(links: Connections, dimension: 2 | 3): { group: number[]; hinge: number[] }[] {
  const degree = links.partners.map((s) => s.size);
  const hubs = degree.map((_, i) => i).sort((a, b) => (degree[b] ?? 0) - (degree[a] ?? 0));
  const limit = dimension === 2 ? 16 : 9;
  const carriers = hubs.slice(0, limit);
  const found: { group: number[]; hinge: number[] }[] = [];
  const consider = (hinge: number[]): void => {
    const groups = componentsWithout(links, hinge);
    if (groups.length < 2) return;
    groups.sort((a, b) => b.length - a.length);
    // The largest group stays put; a single point is folded over all its partners elsewhere.
    for (const group of groups.slice(1)) if (group.length > 1) found.push({ group, hinge });
  };
  carriers.forEach((a, i) => {
    carriers.slice(i + 1).forEach((b, j) => {
      if (dimension === 2) consider([a, b]);
      else for (const c of carriers.slice(i + j + 2)) consider([a, b, c]);
    });
  });
  return found;
}
