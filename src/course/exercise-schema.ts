import { z } from './zod.ts';

/**
 * What content/exercises/<id>/exercise.json may hold (after `$file` is resolved, before a structure's names
 * are filled in). Each field tells its author what it does; `npx counterpose check-content` names what is off.
 */

const text = z.string().min(1);
const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'an id: small letters, digits and single hyphens');
/** A number, or "$name" for a structure to fill in. */
const number = z.union([z.number(), z.string().regex(/^\$/)]);
/** A part's id, or the name of a bone of the start. */
const spoken = text;
const edit = z
  .record(z.string(), z.unknown())
  .describe('what is changed in the rig; lists are keyed by name, null takes away');
const parts = z.record(z.string(), text).describe('part id to bone, or bone.switch');
const only = z.array(id).optional().describe('structures in which this item stands');
const where = z.strictObject({ bone: spoken, at: z.number().min(0).max(1).optional() });

/** What its kind asks for besides is read when the exercise is opened: src/grader/requirements/. */
const requirement = z.looseObject({ id, kind: text, says: text, only });

const input = z
  .strictObject({
    id,
    part: id.optional(),
    bone: text.optional(),
    switch: text.optional(),
    channel: z
      .string()
      .regex(/^((move|turn|size)\.[xyz]|\$\w+)$/, 'a channel such as move.x')
      .optional(),
    min: number,
    max: number,
    only,
  })
  .refine(({ part, bone, switch: own }) => [part, bone, own].filter(Boolean).length === 1, {
    error: 'exactly one of part, bone and switch',
  });

/** In a prediction: what is said in place of the true number. */
const slip = z.strictObject({
  times: z.number().optional(),
  plus: z.number().optional(),
  gauge: z.record(z.string(), z.unknown()).optional(),
});

export const exerciseSchema = z.strictObject({
  format: z.literal('counterpose/exercise'),
  version: z.literal(1),
  id,
  lesson: z.string().regex(/^\d\.\d$/, 'a lesson such as "3.4"'),
  title: text,
  kind: z.enum(['build', 'repair', 'predict', 'pose', 'order', 'shape']),
  graded: z.boolean().describe('three references and four structures at least'),
  skills: z.array(text).min(1),
  task: text.describe('what to make, as a supervisor would say it'),
  why: text.describe('why an animator cares'),
  start: z.record(z.string(), z.unknown()).describe('the rig the learner begins with'),
  kept: z.array(z.strictObject({ bone: text, fields: z.array(text).min(1), only })),
  parts: z.array(
    z.strictObject({ id, is: z.enum(['bone', 'switch']), name: text, given: z.boolean(), says: text, only }),
  ),
  inputs: z.array(input),
  keepOut: z.array(z.strictObject({ says: text, point: where, near: where, within: z.number().positive(), only })),
  requirements: z.array(requirement).min(1),
  references: z.array(
    z.strictObject({
      id,
      says: text,
      edit: edit.optional(),
      response: z.unknown().optional(),
      parts: parts.optional(),
      only,
    }),
  ),
  wrongTurns: z.array(
    z.strictObject({
      id,
      says: text,
      tells: text,
      from: id.optional(),
      edit: edit.optional(),
      response: z.unknown().optional(),
      slip: slip.optional(),
      parts: parts.optional(),
      misses: z.array(id).min(1),
      only,
    }),
  ),
  freeChoices: z.array(
    z.union([
      z.strictObject({ says: text, from: id.optional(), edit, only }).describe('a rig of its own'),
      z
        .strictObject({ says: text, bone: text, fields: z.array(text).min(1), only })
        .describe('fields of a bone that the task leaves open; * is any bone that is made'),
    ]),
  ),
  hints: z.array(
    z.strictObject({
      step: z.enum(['pose', 'requirement', 'where', 'principle', 'worked']),
      requirement: id.optional(),
      says: text,
      only,
    }),
  ),
  structures: z
    .array(
      z.strictObject({
        id,
        says: text,
        let: z.record(z.string(), z.unknown()).optional(),
        reflect: z.boolean().optional(),
      }),
    )
    .min(1),
  draw: z
    .array(z.strictObject({ name: text, from: z.number(), to: z.number(), step: z.number().positive() }))
    .optional()
    .describe('numbers drawn for each seed, filled in as names are'),
  shape: text.optional().describe('the driver whose map is asked for'),
  fault: id.optional().describe('in a repair: the wrong turn that the start shows'),
  sizes: z.array(z.number().positive()).min(1),
});
