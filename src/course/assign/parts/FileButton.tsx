import { useRef } from 'react';

interface Props {
  words: string;
  accept?: string;
  onText: (text: string, name: string) => void;
}

/** A button that asks for a file and gives its text. */
export function FileButton({ words, accept, onText }: Props) {
  const field = useRef<HTMLInputElement>(null);
  async function take(input: HTMLInputElement) {
    const file = input.files?.[0];
    if (!file) return;
    const text = await file.text();
    // The same file may be chosen again once it has been mended.
    input.value = '';
    onText(text, file.name);
  }
  return (
    <>
      <button type="button" onClick={() => field.current?.click()}>
        {words}
      </button>
      <input ref={field} type="file" accept={accept} hidden onChange={(event) => void take(event.target)} />
    </>
  );
}
