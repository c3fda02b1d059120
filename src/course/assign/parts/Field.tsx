import { type ReactNode, useId } from 'react';

interface Props {
  label: string;
  /** Said under the field. */
  note?: string;
  type?: 'text' | 'number' | 'datetime-local';
  value: string;
  onChange: (value: string) => void;
  /** Step of a number; any where it is not said. */
  step?: string;
  min?: string;
}

/** A field under its label. */
export function Field({ label, note, type = 'text', value, onChange, step = 'any', min }: Props) {
  const id = useId();
  return (
    <p className={`field ${type}`}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        value={value}
        autoComplete="off"
        spellCheck={false}
        aria-describedby={note ? `${id}-note` : undefined}
        {...(type === 'number' ? { step, min } : {})}
        onChange={(event) => onChange(event.target.value)}
      />
      {note && (
        <span className="small note" id={`${id}-note`}>
          {note}
        </span>
      )}
    </p>
  );
}

/** What is amiss, told at once; nothing where nothing is. */
export function Alarm({ children }: { children: ReactNode }) {
  return (
    <div className="alarm" role="alert">
      {children}
    </div>
  );
}
