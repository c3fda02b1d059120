import { UNITS, valuesOf, withValue } from '../pose/channels.ts';
import { useBench, useSession } from '../state/bench.ts';
import { choosing } from '../state/choosing.ts';
import { Heading } from '../words/Heading.tsx';
import type { ChannelSlider, Control } from './controls.ts';
import { Slider } from './Slider.tsx';

/** One control: what the exercise moves first, the rest behind a word, what is locked said. */
export function ControlRows({ control }: { control: Control }) {
  const { store, dispatch, idOf } = useBench();
  const { bone, first, more, locked } = control;
  const isChosen = useSession((now) => now.chosen === bone.name);
  return (
    <section
      className="wb-control"
      id={idOf(`control ${bone.name}`)}
      data-chosen={isChosen || undefined}
      {...choosing(() => store.get().chosen !== bone.name && dispatch({ do: 'choose', bone: bone.name }))}
    >
      <Heading rank={2}>{bone.name}</Heading>
      {first.map((slider) => (
        <ChannelRow key={`${slider.channel}${slider.axis}`} control={control} slider={slider} />
      ))}
      {more.length > 0 && (
        <details>
          <summary>
            Other channels<span className="unseen"> of {bone.name}</span>
          </summary>
          {more.map((slider) => (
            <ChannelRow key={`${slider.channel}${slider.axis}`} control={control} slider={slider} />
          ))}
        </details>
      )}
      {locked.length > 0 && <p className="wb-note">Locked: {locked.join(', ')}.</p>}
    </section>
  );
}

function ChannelRow({ control: { bone }, slider }: { control: Control; slider: ChannelSlider }) {
  const { store, dispatch } = useBench();
  const { channel, axis, least, most, step } = slider;
  const short = `${channel} ${'xyz'[axis]}`;
  const value = useSession((now) => valuesOf(now.pose, bone, channel)[axis]);
  return (
    <Slider
      label={`${short} of ${bone.name}`}
      short={short}
      value={Number(value.toPrecision(9))}
      unit={UNITS[channel]}
      least={Math.min(least, value)}
      most={Math.max(most, value)}
      step={step}
      put={(next) => dispatch({ do: 'pose', pose: withValue(store.get().pose, bone, channel, axis, next) })}
    />
  );
}
