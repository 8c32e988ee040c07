interface Props<V extends string> {
  values: readonly V[];
  names: Record<V, string>;
  value: V | null;
  choose: (value: V) => void;
}

/** A closed set to tap one of, in as many columns as fit. */
export function Choice<V extends string>({ question, values, names, value, choose }: Props<V> & { question: string }) {
  return (
    <section class="stack">
      <h2>{question}</h2>
      <div class="choices edge-choices">
        {values.map((option) => (
          <button
            key={option}
            type="button"
            class="button choice"
            aria-pressed={option === value}
            onClick={() => choose(option)}
          >
            {names[option]}
          </button>
        ))}
      </div>
    </section>
  );
}

/** An answer that was given, to be changed. */
export function Picked<V extends string>({ label, values, names, value, choose }: Props<V> & { label: string }) {
  if (value === null) return null;
  return (
    <label class="field picked">
      <span class="sr-only">{label}</span>
      <select
        value={value}
        onChange={(event) => {
          const picked = values.find((option) => option === event.currentTarget.value);
          if (picked) choose(picked);
        }}
      >
        {values.map((option) => (
          <option key={option} value={option}>
            {names[option]}
          </option>
        ))}
      </select>
    </label>
  );
}
