import { dockEdges } from './en/dock-edges.ts';
import { inLanguage } from './rooms.ts';

/** The words of edges at the dock, apart from the rest so that the first load does not carry them. */
export function sayEdges(): typeof dockEdges {
  return inLanguage('dockEdges', dockEdges);
}
