import { z } from '../zod.ts';

/** What content/numbers.json may hold: numbers that the course uses, each with where it comes from. */
const row = z
  .strictObject({
    what: z.string().min(3),
    value: z.string().min(1),
    use: z.string().min(10).describe('What a rigger does with it, in one sentence.'),
    source: z.string().min(5).nullable().describe('Author, title, year; null for common practice.'),
    seen: z
      .enum(['read', 'computed', 'memory'])
      .optional()
      .describe('Whether the source was read, the number was computed from its data, or it is told from memory.'),
    lesson: z
      .string()
      .regex(/^[1-9]\.[1-9]$/)
      .optional(),
  })
  .refine(({ source, seen }) => (source === null) === (seen === undefined), {
    error: 'what has a source says whether it was seen; what is common practice has neither',
  });

export const numbersSchema = z.array(
  z.strictObject({
    id: z.string().regex(/^[a-z]+$/),
    title: z.string().min(3),
    caution: z.string().optional(),
    rows: z.array(row).min(1),
  }),
);

export type NumberRow = z.infer<typeof row>;
