import { type Bone, type Inherits, ROLES, type Role, type TurnOrder } from '../../solver/document/rig.ts';
import { renameBone } from '../edit/renameBone.ts';
import { setInherits, setLock, setRole, setTurnOrder } from '../edit/setBone.ts';
import { setAttach, setParent } from '../edit/setParent.ts';
import { fixed, name, type Option, type Piece, plainOptions, type Sentence, text } from './piece.ts';
import { boneOptions, type Scope } from './scope.ts';

const ATTACH: readonly Option[] = [
  { value: 'free', says: 'free to leave it' },
  { value: 'tip', says: 'fixed on its tip' },
];
const INHERITS: readonly Option[] = [
  { value: 'all', says: 'all of its turning and size' },
  { value: 'uniform', says: 'its turning and its size evenly' },
  { value: 'turn', says: 'its turning alone' },
];
const ORDERS: readonly TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];
const NO_PARENT = '';

/** "vane_left is a helper under post, free to leave it, and takes all of its turning and size." */
export function boneSentence(scope: Scope, bone: Bone): Sentence {
  const keeping = (field: string, pieces: Sentence) => (scope.keeps(bone.name, field) ? fixed(pieces) : pieces);
  return [
    ...keeping('name', namePieces(scope, bone)),
    text(' is a '),
    ...keeping('role', rolePieces(bone)),
    ...keeping('parent', parentPieces(scope, bone)),
    ...(bone.parent === null ? [] : underParent(scope, bone)),
    text('.'),
  ];
}

/** How it hangs on its parent; what is kept and as usual goes without saying. */
function underParent(scope: Scope, bone: Bone): Sentence {
  const fixedAttach = scope.keeps(bone.name, 'attach');
  const fixedInherits = scope.keeps(bone.name, 'inherits');
  const attach = fixedAttach ? fixed(attachPieces(bone)) : attachPieces(bone);
  const inherits = fixedInherits ? fixed(inheritsPieces(bone)) : inheritsPieces(bone);
  return [
    ...(fixedAttach && !bone.attach ? [] : [text(', '), ...attach]),
    ...(fixedInherits && !bone.inherits ? [] : [text(', and takes '), ...inherits]),
  ];
}

/** "It turns in the order xyz. Locked: move x y z, turn x …" */
export function lockSentence(scope: Scope, bone: Bone): Sentence {
  const order: Piece = {
    is: 'choice',
    label: `turn order of ${bone.name}`,
    value: bone.turnOrder ?? 'xyz',
    options: plainOptions(ORDERS),
    edit: (value) => setTurnOrder(bone.name, value as TurnOrder),
  };
  const locks = (['move', 'turn', 'size'] as const).flatMap((channel, i): Piece[] => [
    text(`${i > 0 ? '; ' : ' '}${channel}`),
    ...([0, 1, 2] as const).flatMap((axis): Piece[] => [
      text(' '),
      {
        is: 'mark',
        label: `lock ${channel} ${'xyz'[axis]} of ${bone.name}`,
        text: 'xyz'[axis]!,
        on: bone.locks?.[channel]?.[axis] ?? false,
        edit: (on) => setLock(bone.name, channel, axis, on),
      },
    ]),
  ]);
  return [
    text('It turns in the order '),
    ...(scope.keeps(bone.name, 'turnOrder') ? fixed([order]) : [order]),
    text('. Locked for an animator:'),
    ...(scope.keeps(bone.name, 'locks') ? fixed(locks) : locks),
    text('.'),
  ];
}

function namePieces(scope: Scope, bone: Bone): Sentence {
  if (scope.keeps(bone.name)) return [name(bone.name)];
  return [{ is: 'word', label: `name of ${bone.name}`, value: bone.name, edit: (to) => renameBone(bone.name, to) }];
}

function rolePieces(bone: Bone): Sentence {
  return [
    {
      is: 'choice',
      label: `role of ${bone.name}`,
      value: bone.role,
      options: ROLES.map((role) => ({ value: role, says: role === 'skin' ? 'skin bone' : role })),
      edit: (role) => setRole(bone.name, role as Role),
    },
  ];
}

function parentPieces(scope: Scope, bone: Bone): Sentence {
  return [
    text(bone.parent === null ? ' with ' : ' under '),
    {
      is: 'choice',
      label: `parent of ${bone.name}`,
      value: bone.parent ?? NO_PARENT,
      options: [{ value: NO_PARENT, says: 'no parent' }, ...boneOptions(scope, bone.name)],
      names: bone.parent !== null,
      edit: (parent) => setParent(bone.name, parent === NO_PARENT ? null : parent),
    },
  ];
}

function attachPieces(bone: Bone): Sentence {
  return [
    {
      is: 'choice',
      label: `attachment of ${bone.name}`,
      value: bone.attach ?? 'free',
      options: ATTACH,
      edit: (value) => setAttach(bone.name, value as 'free' | 'tip'),
    },
  ];
}

function inheritsPieces(bone: Bone): Sentence {
  return [
    {
      is: 'choice',
      label: `what ${bone.name} takes of its parent`,
      value: bone.inherits ?? 'all',
      options: INHERITS,
      edit: (value) => setInherits(bone.name, value as Inherits),
    },
  ];
}
