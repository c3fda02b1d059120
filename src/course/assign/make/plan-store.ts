import { withTeaching } from '../keep/teaching-database.ts';
import { newForm, type PlanForm } from './plan-form.ts';

/** The assignment that was being made; undefined where there is none. Rejects where the browser keeps nothing. */
export async function keptForm(): Promise<PlanForm | undefined> {
  const kept = await withTeaching((database) => database.get('plans', 'current'));
  // Fields that a later version of the page has added begin as they do in a new assignment.
  return kept && { ...newForm(), ...kept };
}

export async function keepForm(form: PlanForm): Promise<void> {
  await withTeaching((database) => database.put('plans', form, 'current'));
}
