import type { Flag, FlagName } from '../../solver/index.ts';
import { useSolvedNow } from '../state/solvedNow.ts';

const WORDS: Readonly<Record<FlagName, string>> = {
  flat: 'something has no size along a direction, so that no turn can be read from it',
  shear: 'it is sheared, and the shear is dropped',
  'aim-undefined': 'the target lies on the base, so that there is no direction to aim in',
  'up-undefined': 'the up vector lies along the aim, so that nothing says how to roll',
  'twist-undefined': 'its source is turned half about across its length, so that it has no twist to share',
  'pole-undefined': 'the pole lies on the line to the target, so that nothing says which way to bend',
  'reach-undefined': 'there is nothing to reach with or for',
  'weight-clamped': 'its driver gives a weight outside 0 to 1',
  'switch-clamped': 'a driver sets one of its switches beyond its range',
};

/** What the solver could not do in this pose, in words. */
export function Flags() {
  const flags = useSolvedNow()?.flags ?? [];
  return (
    <ul className="wb-flags" aria-live="polite" aria-label="Where this pose is undefined">
      {flags.map((flag) => (
        <li key={`${flag.flag} ${flag.bone} ${flag.link}`}>{flagWords(flag)}</li>
      ))}
    </ul>
  );
}

export function flagWords({ flag, bone, link }: Flag): string {
  return `${link === null ? bone : `${link} on ${bone}`}: ${WORDS[flag]}.`;
}
