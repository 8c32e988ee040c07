/** How a person at the boat is told what to do, whatever the piece. The words of each piece are in guides/. */
export const guide = {
  hook: (label: string, name: string, where: string) => `Hook on ${label} (${name}, ${where}).`,
  taut: (label: string, name: string, where: string) => `Taut to ${label} (${name}, ${where}).`,
  girth: (from: string, to: string) => `Lay the tape on the edge from ${from} to ${to}.`,
  height: (label: string, name: string, where: string) => `Height of ${label} (${name}, ${where}).`,
  string: (from: string, to: string) => `Stretch a string from ${from} to ${to}, taut.`,
  offString: (label: string, name: string, where: string) => `Square from the string to ${label} (${name}, ${where}).`,
  alongString: (from: string, label: string, name: string) => `Along it from ${from} to beside ${label} (${name}).`,
  plainTaut: (from: string, to: string) => `Hook on ${from}. Taut to ${to}.`,
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
  couldNotTell: 'Could not tell',
  noneHere: 'None here',
};
