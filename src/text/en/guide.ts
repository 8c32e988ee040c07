/** How a person at the boat is told what to do, whatever the piece. The words of each piece are in guides/. */
export const guide = {
  /** A point with what is known of it: P2 (port edge, on the line you chose). */
  spot: (label: string, known: readonly (string | undefined)[]) => {
    const said = known.filter(Boolean).join(', ');
    return said === '' ? label : `${label} (${said})`;
  },
  hook: (spot: string) => `Hook on ${spot}.`,
  taut: (spot: string) => `Taut to ${spot}.`,
  girth: (from: string, to: string) => `Lay the tape on the edge from ${from} to ${to}.`,
  height: (spot: string) => `Height of ${spot}.`,
  string: (from: string, to: string) => `Stretch a string from ${from} to ${to}, taut.`,
  offString: (spot: string) => `Square from the string to ${spot}.`,
  alongString: (from: string, spot: string) => `Along it from ${from} to beside ${spot}.`,
  size: (name: string) => `${name}.`,
  plainOther: (kind: string, points: string) => `${kind}: ${points}.`,
  readingTitle: {
    between: (from: string, to: string) => `${from}–${to}`,
    height: (label: string) => `Height of ${label}`,
    along: (from: string, to: string) => `Along the edge, ${from} to ${to}`,
    offString: (label: string, from: string, to: string) => `${label} off the string ${from}–${to}`,
    alongString: (label: string, from: string, to: string) => `${label} along the string ${from}–${to}`,
    fastener: (number: number) => `Fastener ${number}`,
    size: (of: string, what: string) => (what === '' ? of : `${of} at ${what}`),
    other: (kind: string, points: string) => `${kind} ${points}`,
  },
  /** A mark that was moved: what was read at it holds for where it was. */
  oldMark: (label: string) => `old ${label}`,
  inPlaceOf: (name: string) => `in place of the ${name}`,
  edge: (labels: string) => `Edge ${labels}`,
  picture: (labels: string) => (labels === '' ? 'Picture' : `Picture of ${labels}`),
  couldNotTell: 'Could not tell',
  noneHere: 'None here',
};
