import { z } from './zod.ts';

/** One entry of the glossary: content/glossary/<id>.json. A misspelt field is an error. */
export const glossarySchema = z.strictObject({
  word: z.string().min(2).describe('The word as it is printed.'),
  means: z.string().min(10).describe('What it means, in one to three plain sentences.'),
  from: z.enum(['trade', 'standard', 'ours']).describe('Whose word it is.'),
  where: z.string().optional().describe('For a word of a standard or a literature: which.'),
  others: z.array(z.string()).default([]).describe('What several independent texts call it, if not so.'),
  lesson: z
    .string()
    .regex(/^[1-9]\.[1-9]$/)
    .optional()
    .describe('The lesson that explains it.'),
});

export type GlossaryEntry = z.infer<typeof glossarySchema>;
