import { useMemo } from 'react';
import { scopeOf } from '../sentence/scope.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Heading } from '../words/Heading.tsx';
import { AddBone } from './AddBone.tsx';
import { BoneRow } from './BoneRow.tsx';
import { CopySide } from './CopySide.tsx';
import { Drivers } from './Drivers.tsx';
import { groupsOf } from './groups.ts';
import { Parts } from './Parts.tsx';

/** Build: the bones of the rig as rows, gathered by what they serve, each link a sentence. */
export function Mechanism() {
  const { exercise } = useBench();
  const draft = useSession(draftOf);
  const scope = useMemo(() => scopeOf(draft, exercise.start, exercise.kept), [draft, exercise]);
  return (
    <section className="wb-mechanism" aria-label={`Mechanism of ${exercise.title}`}>
      <Heading rank={1}>Mechanism</Heading>
      <Parts scope={scope} />
      {groupsOf(draft, exercise).map(({ title, bones }) => (
        <section key={title}>
          <Heading rank={2}>{title}</Heading>
          <ul className="wb-rows">
            {bones.map(({ bone, serves }) => (
              <BoneRow key={bone.name} scope={scope} bone={bone} serves={serves} />
            ))}
          </ul>
        </section>
      ))}
      <p className="wb-adds">
        <AddBone />
        <CopySide />
      </p>
      <Drivers scope={scope} />
    </section>
  );
}
