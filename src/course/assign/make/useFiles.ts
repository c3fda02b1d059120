import { useEffect, useState } from 'react';
import { type ExerciseFile, exerciseFile } from '../exercise-file.ts';

/** The exercises that are chosen, as they come in. */
export function useFiles(ids: readonly string[]): readonly ExerciseFile[] {
  const [files, setFiles] = useState<readonly ExerciseFile[]>([]);
  const key = ids.join(' ');
  useEffect(() => {
    let isOver = false;
    const wanted = key === '' ? [] : key.split(' ');
    Promise.all(wanted.map(exerciseFile)).then(
      (all) => !isOver && setFiles(all),
      () => !isOver && setFiles([]),
    );
    return () => {
      isOver = true;
    };
  }, [key]);
  return files;
}
