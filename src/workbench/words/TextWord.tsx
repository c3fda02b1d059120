import { type KeyboardEvent, useState } from 'react';

interface Props {
  label: string;
  value: string;
  put: (value: string) => void;
  refusalId?: string | undefined;
}

/** A name in the text: it holds once it is left or Enter is pressed, and Esc gives it up. */
export function TextWord({ label, value, put, refusalId }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const shown = typed ?? value;

  function hold() {
    if (typed !== null && typed.trim() !== value) put(typed.trim());
    setTyped(null);
  }

  function onKeyDown(event: KeyboardEvent) {
    // While a name is being typed, undo is the field's own.
    if (typed !== null && (event.ctrlKey || event.metaKey)) event.stopPropagation();
    if (event.key === 'Enter') {
      // Else the key would go on to press whatever has the focus once the name has changed.
      event.preventDefault();
      hold();
    }
    if (event.key === 'Escape') setTyped(null);
  }

  return (
    <span className="wb-word wb-name">
      <span aria-hidden="true">{shown || ' '}</span>
      <input
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        aria-label={label}
        aria-describedby={refusalId}
        aria-invalid={refusalId ? true : undefined}
        value={shown}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={hold}
      />
    </span>
  );
}
