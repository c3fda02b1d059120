import type { Channel, FollowLink } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { withField } from '../edit/draft.ts';
import { type Option, type Sentence, text } from './piece.ts';
import { boneOptions, type Scope } from './scope.ts';

const CHANNELS: readonly Option[] = [
  { value: 'move,turn,size', says: 'move, turn and size' },
  { value: 'move', says: 'move' },
  { value: 'turn', says: 'turn' },
  { value: 'size', says: 'size' },
  { value: 'move,turn', says: 'move and turn' },
  { value: 'move,size', says: 'move and size' },
  { value: 'turn,size', says: 'turn and size' },
];
const OFFSETS: readonly Option[] = [
  { value: 'none', says: 'onto its place' },
  { value: 'keep', says: 'keeping the offset it has at rest' },
];

/** "… head in move and turn, keeping the offset it has at rest" */
export function followSentence(scope: Scope, bone: string, link: FollowLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const set = (what: string, next: FollowLink) => changeLink(bone, link.name, what, () => next);
  return [
    {
      is: 'choice',
      label: `source of ${of}`,
      value: link.source,
      options: boneOptions(scope, bone),
      names: true,
      edit: (source) => set('source', { ...link, source }),
    },
    text(' in '),
    {
      is: 'choice',
      label: `channels of ${of}`,
      value: channelsValue(link),
      options: CHANNELS,
      edit: (value) => set('channels', withField(link, 'channels', channelsOf(value))),
    },
    text(', '),
    {
      is: 'choice',
      label: `offset of ${of}`,
      value: link.offset ?? 'none',
      options: OFFSETS,
      edit: (value) => set('offset', withField(link, 'offset', value === 'keep' ? value : undefined)),
    },
  ];
}

function channelsValue(link: FollowLink): string {
  const chosen = link.channels ?? ['move', 'turn', 'size'];
  return (['move', 'turn', 'size'] as const).filter((channel) => chosen.includes(channel)).join(',');
}

function channelsOf(value: string): readonly Channel[] | undefined {
  const channels = value.split(',') as Channel[];
  return channels.length === 3 ? undefined : channels;
}
