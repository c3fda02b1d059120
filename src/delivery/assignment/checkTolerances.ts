import { markingOf, openExercise } from '../../grader/index.ts';
import { refuse } from '../../solver/document/reader.ts';
import { quoted } from '../../solver/document/words.ts';
import type { AssignedExercise, CarriedExercise } from './assignment.ts';

/**
 * Refuses a tolerance of a requirement that the exercise does not have, or of a gate: gates are what the untouched start
 * meets as it was written, and an assignment moves none. Gates are looked up in the exercise as drawn; one that is a gate
 * in another variant only keeps its own tolerance there.
 */
export function checkTolerances({ tolerances = {} }: AssignedExercise, { definition, edition }: CarriedExercise): void {
  const changed = Object.keys(tolerances);
  if (changed.length === 0) return;
  const ids = definition.requirements.map(({ id }) => id);
  const stray = changed.find((id) => !ids.includes(id));
  if (stray !== undefined) {
    refuse(quoted(stray), `a requirement of ${definition.id}: ${ids.join(', ')}`, ['tolerances']);
  }
  const gates = gatesOf(definition, edition);
  const gate = changed.find((id) => gates.has(id));
  if (gate !== undefined) {
    const free = ids.filter((id) => !gates.has(id));
    refuse(`${quoted(gate)}, a gate`, `a requirement that is no gate: ${free.join(', ')}`, ['tolerances']);
  }
}

function gatesOf(definition: CarriedExercise['definition'], edition: string): ReadonlySet<string> {
  try {
    return markingOf(openExercise(definition, { edition, seed: 0 })).gates;
  } catch (error) {
    return refuse(`a start that cannot be proved: ${(error as Error).message.slice(0, 200)}`, 'an exercise', ['id']);
  }
}
