import type { ComponentChildren } from 'preact';

interface Props {
  label: string;
  spoken?: string;
  press: () => void;
  /** Stays down: what the pad stands on. */
  down?: boolean;
  children?: ComponentChildren;
}

/** One key of the pad. */
export function Key({ label, spoken, press, down, children }: Props) {
  return (
    <button
      type="button"
      class={label.length > 1 && !children ? 'key word' : 'key'}
      aria-label={spoken ? `${label} ${spoken}` : label}
      aria-pressed={down}
      onClick={press}
    >
      {children ?? label}
    </button>
  );
}

/** A fraction as tapes and rules write it, one number over the other: narrow enough for large text. */
export function FractionKey({ label, press }: { label: string; press: () => void }) {
  const [top, bottom] = label.split('/');
  return (
    <Key label={label} press={press}>
      <span class="fraction">
        <span>{top}</span>
        <span class="bar">/</span>
        <span>{bottom}</span>
      </span>
    </Key>
  );
}

export function BackKey({ spoken, press }: { spoken: string; press: () => void }) {
  return (
    <Key label="⌫" spoken={spoken} press={press}>
      <svg class="back-sign" viewBox="0 0 24 16" aria-hidden="true">
        <path d="M8 1h15v14H8L1 8zM12 5l6 6m0-6l-6 6" />
      </svg>
    </Key>
  );
}

interface NextProps {
  label: string;
  press: () => void;
  disabled: boolean;
  quiet: boolean;
}

export function NextKey({ label, press, disabled, quiet }: NextProps) {
  return (
    <button
      type="button"
      class={quiet ? 'key next quiet-next' : 'key next'}
      onClick={press}
      aria-disabled={disabled}
      data-testid="next"
    >
      {label}
    </button>
  );
}
