import './workbench.css';
import './words/words.css';
import './plate/plate.css';
import './tryout/tryout.css';
import { useMemo, useState } from 'react';
import type { Rig } from '../solver/document/rig.ts';
import { Plate } from './plate/Plate.tsx';
import { PoseNumbers } from './plate/PoseNumbers.tsx';
import { FIRST_LOOK, type ViewName } from './plate/view.ts';
import { ready, solved } from './pose/solved.ts';
import { poseOf, type SliderAsked, valuesAtFirst } from './tryout/posed.ts';
import { Slider } from './tryout/Slider.tsx';

interface Props {
  /** A rig document that can be read and evaluated. */
  rig: Rig;
  sliders: readonly SliderAsked[];
  view?: ViewName;
  /** What is to be seen: the name of the picture, for those who do not see it, and the line under it. */
  caption: string;
}

/** A figure that can be moved: a rig on a plate with a few sliders. Drawn plain where no script or no WebGL runs. */
export function MovingPlate({ rig, sliders, view = FIRST_LOOK.view, caption }: Props) {
  const [values, setValues] = useState(() => valuesAtFirst(sliders));
  const made = useMemo(() => ready(rig), [rig]);
  const posed = useMemo(
    () => (made.ok ? solved(made.ready, poseOf(rig, sliders, values)) : null),
    [made, rig, sliders, values],
  );
  if (!posed) return null;
  return (
    <figure className="wb wb-figure">
      <Plate solved={posed} label={caption} look={{ ...FIRST_LOOK, view }} bare />
      {sliders.map((slider, i) => (
        <Slider
          key={slider.label}
          label={slider.label}
          short={slider.label}
          value={values[i]!}
          unit={slider.channel?.startsWith('move') ? 'm' : slider.channel?.startsWith('turn') ? '°' : ''}
          least={slider.min}
          most={slider.max}
          step={(slider.max - slider.min) / 100}
          put={(value) => setValues(values.with(i, value))}
        />
      ))}
      <figcaption>{caption}</figcaption>
      <PoseNumbers solved={posed} />
    </figure>
  );
}
