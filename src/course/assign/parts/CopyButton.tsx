import { useId, useState } from 'react';

interface Props {
  words: string;
  label: string;
  text: string;
  onCopy?: () => void;
}

/**
 * A text in a field, with a button that copies it. The clipboard is missing on pages that come over plain http: then the
 * text is chosen in its field, to be copied by hand.
 */
export function CopyButton({ words, label, text, onCopy }: Props) {
  const id = useId();
  const [told, setTold] = useState('');
  async function copy() {
    onCopy?.();
    try {
      await navigator.clipboard.writeText(text);
      setTold('Copied.');
    } catch {
      const field = document.getElementById(id) as HTMLTextAreaElement;
      field.focus();
      field.select();
      setTold('It is chosen: copy it with Ctrl or ⌘ and C.');
    }
  }
  return (
    <div className="copy">
      <label htmlFor={id}>{label}</label>
      <textarea id={id} readOnly rows={3} value={text} spellCheck={false} />
      <p>
        <button type="button" onClick={() => void copy()}>
          {words}
        </button>{' '}
        <span role="status">{told}</span>
      </p>
    </div>
  );
}
