import { type ReactNode, useId } from 'react';

interface Props {
  label: string;
  take: (files: File[]) => void;
  accept?: string;
  multiple?: boolean;
  /** A whole folder is chosen. */
  folder?: boolean;
  /** What was taken. */
  children?: ReactNode;
}

/** A field to choose a file with, and what came of it. */
export function FileField({ label, take, accept, multiple = false, folder = false, children }: Props) {
  const id = useId();
  return (
    <p className="mb-file">
      <label htmlFor={id}>{label}</label>{' '}
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={multiple || folder}
        {...(folder && { webkitdirectory: '' })}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          if (files.length > 0) take(files);
        }}
      />{' '}
      <span className="small">{children}</span>
    </p>
  );
}
