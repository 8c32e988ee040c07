/**
 * Minimum-degree elimination order of an undirected graph, with the fill it causes.
 * Dense boolean adjacency: the graphs here are the points of one piece, some hundreds at most.
 */
export interface Elimination {
  /** order[k] = node eliminated k-th. */
  readonly order: Int32Array;
  /** position[node] = k. */
  readonly position: Int32Array;
  /** later[k] = positions (ascending) of the nodes coupled to the k-th one when it is eliminated. */
  readonly later: readonly Int32Array[];
}

/**
 * @param size number of nodes
 * @param edges flat list of node pairs; repeats and loops are harmless
 * @param last nodes to keep to the end when degrees tie (hubs, the datum's points)
 */
export function minimumDegree(size: number, edges: readonly number[], last: ReadonlySet<number>): Elimination {
  const linked = new Uint8Array(size * size);
  for (let e = 0; e + 1 < edges.length; e += 2) {
    const a = edges[e] as number;
    const b = edges[e + 1] as number;
    if (a === b) continue;
    linked[a * size + b] = 1;
    linked[b * size + a] = 1;
  }
  const degree = new Int32Array(size);
  for (let a = 0; a < size; a++) {
    let d = 0;
    for (let b = 0; b < size; b++) d += linked[a * size + b] as number;
    degree[a] = d;
  }
  const order = new Int32Array(size);
  const position = new Int32Array(size).fill(-1);
  const groups: number[][] = [];
  for (let k = 0; k < size; k++) {
    const node = pick(size, position, degree, last);
    const group: number[] = [];
    for (let b = 0; b < size; b++) if (linked[node * size + b] === 1 && position[b] === -1) group.push(b);
    order[k] = node;
    position[node] = k;
    groups.push(group);
    for (const a of group) degree[a] = (degree[a] as number) - 1;
    joinAll(group, linked, size, degree);
  }
  const later = groups.map((g) => Int32Array.from(g, (b) => position[b] as number).sort());
  return { order, position, later };
}

function pick(size: number, position: Int32Array, degree: Int32Array, last: ReadonlySet<number>): number {
  let best = -1;
  let bestKey = Number.POSITIVE_INFINITY;
  for (let a = 0; a < size; a++) {
    if (position[a] !== -1) continue;
    const key = 2 * (degree[a] as number) + (last.has(a) ? 1 : 0);
    if (key < bestKey) {
      best = a;
      bestKey = key;
    }
  }
  return best;
}

function joinAll(group: readonly number[], linked: Uint8Array, size: number, degree: Int32Array): void {
  for (let i = 0; i < group.length; i++) {
    const a = group[i] as number;
    for (let j = i + 1; j < group.length; j++) {
      const b = group[j] as number;
      if (linked[a * size + b] === 1) continue;
      linked[a * size + b] = 1;
      linked[b * size + a] = 1;
      degree[a] = (degree[a] as number) + 1;
      degree[b] = (degree[b] as number) + 1;
    }
  }
}
