import type { Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';

type Units = Setting<'units'>;
const FRACTIONS = [8, 16, 32] as const;

/** What the tape reads: inches to a fraction, or millimetres. */
export function UnitsField({ value, onChange }: { value: Units; onChange: (units: Units) => void }) {
  const words = say().dock.begin;
  return (
    <>
      <label class="field">
        <span>{words.units}</span>
        <select
          value={value.system}
          onChange={(e) => onChange({ ...value, system: e.currentTarget.value === 'metric' ? 'metric' : 'imperial' })}
        >
          <option value="imperial">{words.imperial}</option>
          <option value="metric">{words.metric}</option>
        </select>
      </label>
      {value.system === 'imperial' && (
        <label class="field">
          <span>{words.fraction}</span>
          <select
            value={String(value.fraction)}
            onChange={(e) => {
              const fraction = FRACTIONS.find((candidate) => String(candidate) === e.currentTarget.value);
              if (fraction) onChange({ ...value, fraction });
            }}
          >
            {FRACTIONS.map((fraction) => (
              <option key={fraction} value={String(fraction)}>
                1/{fraction} in
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}
