/** The grader's public face. */
export { readAnswer, readAnswerText } from './answer.ts';
export { type Binding, bindParts } from './bind.ts';
export type * from './exercise/answer.ts';
export type * from './exercise/definition.ts';
export type * from './exercise/exercise.ts';
export type * from './exercise/inputs.ts';
export { openExercise, variantCount } from './exercise/open.ts';
export type * from './exercise/works.ts';
export { grade, type Marking, markingOf } from './grade.ts';
export { kindOf } from './requirements/table.ts';
export { responseKindOf } from './responses/response.ts';
export type * from './result.ts';
export { amountText } from './words/amount.ts';
export { messageOf, wrongTurnText } from './words/message.ts';
export { poseText } from './words/poseText.ts';
