import { isPrivateNumber, lessonOf } from '../outline.ts';
import type { Files } from './files.ts';
import { UNWRITTEN } from './new-exercise.ts';

/**
 * The files of a new lesson: head and parts in their order. Throws where the outline has no lesson of that number; a
 * private folder may have others in a chapter of its own.
 */
export function newLesson(number: string, isPrivate: boolean): Files {
  const title = lessonOf(number)?.title ?? (isPrivate && isPrivateNumber(number) ? UNTITLED : undefined);
  if (title === undefined) throw new Error(`no lesson ${number} stands in src/course/outline.ts`);
  return { 'lesson.mdx': text(number, title) };
}

const UNTITLED = `${UNWRITTEN}a title of a few words`;

const text = (number: string, title: string) => `---
number: ${JSON.stringify(number)}
title: ${JSON.stringify(title)}
idea: … the one idea, in one sentence.
why: … why it matters when an animator opens the rig, one or two sentences.
minutes: 8
skills: [name-the-skill]
exercises: []
terms: []
card:
  - … the first thing to keep in mind, one line.
  - … the second thing to keep in mind, one line.
---

## The picture

… What is seen, before any formula.

## What it is

… The thing itself in words.

<Prediction question="… what will happen?">

… The answer, closed until it is opened.

</Prediction>

<WorkedExample of="… what is made here">

… One example in full.

</WorkedExample>

<Failure seen="… what one sees when it is wrong">

… Why, and where to look.

</Failure>

<Transfer>

… One new item, without help.

<div slot="answer">

… Its answer.

</div>

</Transfer>
`;
