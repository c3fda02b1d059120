import { readFileSync } from 'node:fs';
import { type OpenedAssignment, readAssignmentText } from '../delivery/assignment/readAssignment.ts';
import { accept, Unusable } from './refusal.ts';

/** Reads an assignment's file. Throws Unusable where it cannot be read, or its signature does not fit. */
export function readAssignmentFile(path: string): OpenedAssignment {
  return accept(path, readAssignmentText(textOf(path)));
}

function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new Unusable(`${path}: found ${(error as NodeJS.ErrnoException).code}, expected an assignment`);
  }
}
