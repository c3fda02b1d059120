import { z } from './zod.ts';

const count = z.int().min(0);
const counts = {
  references: count,
  rightTried: count,
  rightRefused: count,
  wrongTried: count,
  wrongPassed: count,
  undecided: count,
  diagnosed: count,
  diagnosedRight: count,
  counterposes: count,
  counterposesSimple: count,
};

/** The audit that is published: content/audit.json, written by `npm run audit`. */
export const auditSchema = z.strictObject({
  date: z.iso.date().describe('when it was made'),
  edition: z.string().describe('of the exercises it was made on'),
  exercises: z.array(z.strictObject({ id: z.string(), ...counts })),
  totals: z.strictObject(counts),
});

export type Audit = z.infer<typeof auditSchema>;

/** 3/n in per cent, two digits: the bound at 95 % where nothing was seen in n trials (1 − 0.05^(1/n) ≈ 3/n). */
export function boundPercent(trials: number): string {
  return String(Number((300 / trials).toPrecision(2)));
}
