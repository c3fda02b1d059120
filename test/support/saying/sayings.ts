import type { Exercise } from '../../../src/grader/index.ts';
import type { Rig } from '../../../src/solver/index.ts';
import type { Draft } from '../../../src/workbench/edit/draft.ts';
import { boneSentence, lockSentence } from '../../../src/workbench/sentence/boneSentence.ts';
import { driverSentence } from '../../../src/workbench/sentence/driverSentence.ts';
import { linkSentence } from '../../../src/workbench/sentence/linkSentence.ts';
import { keySentences, mapSentence } from '../../../src/workbench/sentence/mapSentence.ts';
import { type Piece, spoken, withUnit } from '../../../src/workbench/sentence/piece.ts';
import { restSentence } from '../../../src/workbench/sentence/restSentence.ts';
import { scopeOf } from '../../../src/workbench/sentence/scope.ts';
import { switchSentence } from '../../../src/workbench/sentence/switchSentence.ts';
import type { Deed } from './deeds.ts';

interface Placed {
  readonly piece: Piece;
  /** The bone whose rest and locks have to be opened for it. */
  readonly within?: string;
}

/** Every piece of every sentence of the mechanism; of an exercise that asks for a map, of that map alone. */
function piecesOf(draft: Draft, { start, kept, kind, shape }: Exercise): Placed[] {
  const scope = scopeOf(draft, start, kept);
  const { bones, drivers = [] } = draft.rig;
  if (kind === 'shape') {
    return drivers
      .filter(({ name }) => name === shape)
      .flatMap((driver) => [...mapSentence(driver), ...keySentences(driver).flat()].map((piece) => ({ piece })));
  }
  return [
    ...bones.flatMap((bone) => [
      ...[
        ...boneSentence(scope, bone),
        ...(bone.switches ?? []).flatMap((own) => switchSentence(scope, bone.name, own)),
        ...(bone.links ?? []).flatMap((link) => linkSentence(scope, bone.name, link)),
      ].map((piece) => ({ piece })),
      ...[...restSentence(scope, bone), ...lockSentence(scope, bone)].map((piece) => ({ piece, within: bone.name })),
    ]),
    ...drivers
      .flatMap((driver) => [...driverSentence(scope, driver), ...mapSentence(driver), ...keySentences(driver).flat()])
      .map((piece) => ({ piece })),
  ];
}

/** What may be said otherwise in the sentences there are: each field as the wanted rig has it, and each button. */
export function sayings(draft: Draft, wanted: Rig, exercise: Exercise): Deed[] {
  const goals = new Map(
    piecesOf({ ...draft, rig: wanted }, exercise).flatMap(({ piece }) =>
      'label' in piece ? [[`${piece.is} ${piece.label}`, piece] as const] : [],
    ),
  );
  return piecesOf(draft, exercise).flatMap(({ piece, within }): Deed[] => {
    if (!('label' in piece)) return [];
    const deed = said(piece, goals.get(`${piece.is} ${piece.label}`));
    if (!deed) return [];
    return [within === undefined ? deed : { ...deed, moves: [{ do: 'open', bone: within }, ...deed.moves] }];
  });
}

function said(piece: Piece, goal: Piece | undefined): Deed | null {
  if (piece.is === 'press') return { moves: [{ do: 'press', button: spoken(piece) }], edits: [piece.edit] };
  if (piece.is === 'choice' && goal?.is === 'choice' && goal.value !== piece.value) {
    const option = piece.options.find(({ value }) => value === goal.value);
    if (!option) return null;
    return {
      moves: [{ do: 'choose', field: piece.label, says: option.says }],
      edits: [piece.edit(option.value)],
    };
  }
  if (piece.is === 'number' && goal?.is === 'number' && goal.value !== piece.value) {
    const field = withUnit(piece.label, piece.unit);
    return { moves: [{ do: 'write', field, text: String(goal.value) }], edits: [piece.edit(goal.value)] };
  }
  if (piece.is === 'mark' && goal?.is === 'mark' && goal.on !== piece.on) {
    return { moves: [{ do: 'tick', field: piece.label, on: goal.on }], edits: [piece.edit(goal.on)] };
  }
  return null;
}
