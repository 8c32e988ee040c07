/** A number with its name and what it means in plain words. */
export interface Term {
  term: readonly [name: string, meaning: string];
  value: string;
}

/** Numbers behind a judgement, closed until somebody wants them. */
export function Terms({ name, note, rows }: { name: string; note?: string; rows: readonly Term[] }) {
  return (
    <details class="bench-numbers">
      <summary>{name}</summary>
      {note !== undefined && <p class="small">{note}</p>}
      <dl>
        {rows.map(({ term: [title, meaning], value }) => (
          <div key={title}>
            <dt>{title}</dt>
            <dd class="number">{value}</dd>
            <dd class="small quiet">{meaning}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
