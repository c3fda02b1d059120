import type { AssignedExercise } from '../../../delivery/assignment/assignment.ts';
import type { Plan } from '../../../delivery/assignment/makeAssignment.ts';
import { slug } from '../../site/slug.ts';
import { ownZone, zonedTime } from '../time/zoned-time.ts';

/** What stands in the fields of the page, as it was typed. */
export interface PlanForm {
  /** The end of the id, drawn once for each assignment. */
  tail: string;
  /** The id, once a file has been saved: from then on the title may change and the variants stay. */
  id: string | null;
  title: string;
  chosen: readonly ChosenExercise[];
  passPercent: string;
  /** Empty for any number. */
  attempts: string;
  opens: string;
  due: string;
  zone: string;
  latePercent: string;
  lateUntil: string;
  house: { name: string; value: unknown } | null;
}

export interface ChosenExercise {
  id: string;
  weight: string;
  /** What is allowed otherwise, by requirement; empty where it is as authored. */
  tolerances: Readonly<Record<string, string>>;
}

const LONGEST_ID = 64;
const DIGITS = '0123456789abcdefghjkmnpqrstvwxyz';

export function newForm(random: Uint8Array = crypto.getRandomValues(new Uint8Array(6))): PlanForm {
  return {
    tail: [...random].map((byte) => DIGITS[byte % DIGITS.length]).join(''),
    id: null,
    title: '',
    chosen: [],
    passPercent: '60',
    attempts: '',
    opens: '',
    due: '',
    zone: ownZone(),
    latePercent: '0',
    lateUntil: '',
    house: null,
  };
}

/** The id of the assignment: its title and a few drawn letters, unless it is settled already. */
export function idOf({ id, title, tail }: PlanForm): string {
  if (id !== null) return id;
  const words = slug(title).slice(0, LONGEST_ID - tail.length - 1);
  return `${words || 'assignment'}-${tail}`;
}

/** The plan in the fields, or what is amiss with them, one sentence each. */
export function planOf(form: PlanForm): { plan: Plan } | { faults: string[] } {
  const faults: string[] = [];
  const number = (typed: string, what: string, isRight: (value: number) => boolean): number => {
    const value = typed.trim() === '' ? Number.NaN : Number(typed);
    if (!isRight(value)) faults.push(`${what}.`);
    return value;
  };
  const { title, chosen, attempts, opens, due, zone, latePercent, lateUntil, house } = form;
  if (title.trim() === '') faults.push('Give it a title.');
  if (chosen.length === 0) faults.push('Choose at least one exercise.');
  const exercises = chosen.map((one) => assigned(one, number));
  const passMark = number(form.passPercent, 'The pass mark is from 0 to 100 per cent', isPercent) / 100;
  const perDay = number(latePercent, 'What late work costs is from 0 to 100 per cent a day', isPercent) / 100;
  const isLate = due !== '' && (perDay > 0 || lateUntil !== '');
  const plan: Plan = {
    id: idOf(form),
    title: title.trim(),
    exercises,
    passMark,
    ...(opens !== '' && { opens: zonedTime(opens, zone) }),
    ...(due !== '' && { due: zonedTime(due, zone) }),
    ...(isLate && { late: { perDay, ...(lateUntil !== '' && { until: zonedTime(lateUntil, zone) }) } }),
    ...(attempts.trim() !== '' && {
      attempts: number(attempts, 'Attempts are a whole number from 1, or left empty', isCount),
    }),
    ...(house && { house: house.value }),
  };
  return faults.length > 0 ? { faults } : { plan };
}

type ReadNumber = (typed: string, what: string, isRight: (value: number) => boolean) => number;

function assigned({ id, weight, tolerances }: ChosenExercise, number: ReadNumber): AssignedExercise {
  const changed = Object.entries(tolerances).filter(([, typed]) => typed.trim() !== '');
  const read = changed.map(([requirement, typed]) => [
    requirement,
    number(typed, `What is allowed for ${requirement} in ${id} is a number above 0`, isPositive),
  ]);
  return {
    id,
    weight: number(weight, `The weight of ${id} is a number above 0`, isPositive),
    ...(read.length > 0 && { tolerances: Object.fromEntries(read) }),
  };
}

const isPercent = (value: number) => value >= 0 && value <= 100;
const isPositive = (value: number) => value > 0 && Number.isFinite(value);
const isCount = (value: number) => Number.isInteger(value) && value >= 1;
