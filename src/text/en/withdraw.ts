const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

const and = (parts: string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

export const withdraw = {
  open: 'Withdraw for good',
  why: 'Why?',
  reasons: ['Somebody in it asked for it', 'Shows what is private', 'Taken by mistake'],
  reasonsOfPerson: ['They asked for it', 'Not needed any more', 'Entered by mistake'],
  now: 'Withdraw it for good',
  photoLoses: (marks: number, lines: number, notes: number) => {
    const parts = ['the picture'];
    if (marks > 0) parts.push(counted(marks, 'mark', 'marks'));
    if (lines > 0) parts.push(counted(lines, 'line', 'lines'));
    if (notes > 0) parts.push(counted(notes, 'note', 'notes'));
    return `Gone for good: ${and(parts)}. Nobody can bring that back.`;
  },
  detailsLose: (names: string[]) => `Gone for good: ${and(names)}, earlier spellings too. Nobody can bring that back.`,
  nameGoes: (name: string) => `The name of the job holds it; it will be “${name}”.`,
  copies:
    'Copies already sent cannot be called back. Send the job again: a device that takes it in loses it too. That somebody withdrew something stays in the history.',
  stillHere: 'Another job on this device holds the same picture. Withdraw it there too.',
  notes: 'What was typed elsewhere stays: notes, reasons, and who measured.',
  nothing: 'Tick what is to go.',
};
