import type { Known } from '../known.ts';
import type { Reader } from '../reader.ts';
import { boneName } from '../references.ts';
import type { Channel, FollowLink } from '../rig.ts';
import { list, needed, optional, record } from '../structures.ts';
import { exactly, finite, name, oneOf, refuseRepeatedWords } from '../values.ts';

const someChannels = list('channels', oneOf<Channel>(['move', 'turn', 'size']), { least: 1 });

const channels: Reader<readonly Channel[]> = (value, known) => {
  const words = someChannels(value, known);
  refuseRepeatedWords(words, 'channel');
  return words;
};

export const readFollow: Reader<FollowLink, Known> = record('a follow', {
  name: needed(name),
  kind: needed(exactly('follow')),
  weight: optional(finite),
  source: needed(boneName),
  channels: optional(channels),
  offset: optional(oneOf(['none', 'keep'])),
});
