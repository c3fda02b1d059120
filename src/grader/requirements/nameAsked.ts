import { needed } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { boneOf } from '../bind.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader, spokenList } from './requirement.ts';

export interface NameAsked extends RequirementBase {
  kind: 'name';
  bones: readonly string[];
  /** Words of small letters and digits joined by "_", of which the last may be a side; or a house sheet's own pattern. */
  words: string;
}

/** How many of the bones have a name that does not fit the pattern, in which * stands for any word. */
export const nameAsked: StructureKind<NameAsked> = {
  kind: 'name',
  about: 'structure',
  read: requirementReader<NameAsked>('name', { bones: needed(spokenList), words: needed(text) }),
  unit: () => 'names',
  bones: ({ bones }) => bones,
  inputs: () => [],
  missed: ({ words }, { places }) => `Names that do not fit ${words}: ${places.join(', ')}.`,
  inspect({ bones, words }, { binding }) {
    const pattern = words.split('_');
    const places = bones.map((bone) => boneOf(bone, binding)!).filter((name) => !fits(name.split('_'), pattern));
    return { measured: places.length, places };
  },
};

function fits(words: readonly string[], pattern: readonly string[]): boolean {
  const isWord = (word: string) => /^[a-z0-9]+$/.test(word);
  return (
    words.length === pattern.length &&
    words.every((word, i) => isWord(word) && (pattern[i] === '*' || pattern[i] === word))
  );
}
