/** P12 is the twelfth of the Ps; T and P2a are of no row. */
export function rowOf(label: string): { prefix: string; number: number } | null {
  const [, prefix, digits] = /^(\D+)(\d{1,4})$/.exec(label) ?? [];
  return prefix === undefined || digits === undefined ? null : { prefix, number: Number(digits) };
}

/** The next number of a label's row beside these labels, or the second of its kind: W4 after W1 to W3, F2 after F. */
export function nextInRow(label: string, labels: readonly string[]): string {
  const prefix = rowOf(label)?.prefix ?? label;
  const numbers = labels.flatMap((other) => {
    const row = rowOf(other);
    return row?.prefix === prefix ? [row.number] : [];
  });
  return `${prefix}${Math.max(labels.includes(prefix) ? 1 : 0, ...numbers) + 1}`;
}
