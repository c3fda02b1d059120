import type { Part } from '../../grader/exercise/definition.ts';
import { bindPart } from '../edit/bindPart.ts';
import { plainOptions } from '../sentence/piece.ts';
import { allSwitches, type Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { Choice } from '../words/Choice.tsx';
import { boundTo } from './groups.ts';

/** Which bone or switch stands for each part of the task: "The left target is wind_left." */
export function Parts({ scope }: { scope: Scope }) {
  const { exercise } = useBench();
  const asked = exercise.parts.filter((part) => !part.given);
  if (asked.length === 0) return null;
  return (
    <ul className="wb-parts" aria-label="Parts of the task">
      {asked.map((part) => (
        <PartLine key={part.id} scope={scope} part={part} />
      ))}
    </ul>
  );
}

function PartLine({ scope, part }: { scope: Scope; part: Part }) {
  const { edit } = useBench();
  const { bones } = scope.draft.rig;
  const names = part.is === 'bone' ? bones.map((bone) => bone.name) : allSwitches(bones);
  const bound = boundTo(scope.draft, part);
  const options = [{ value: '', says: 'not made yet' }, ...plainOptions(names)];
  const choose = (value: string) =>
    edit(bindPart(part.id, value === '' || value === part.name ? null : value), `part ${part.id}`);
  return (
    <li>
      {capital(part.says)} is <Choice label={`what ${part.says} is`} value={bound} options={options} choose={choose} />
      {bound === '' ? (
        <>
          ; the task calls it <b>{part.name}</b>.
        </>
      ) : (
        '.'
      )}
    </li>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
