import { withSwitch } from '../pose/channels.ts';
import { useBench, useSession } from '../state/bench.ts';
import type { SwitchControl } from './controls.ts';
import { Slider } from './Slider.tsx';

/** A switch: sliding, or one step from end to end; one that is driven cannot be set. */
export function SwitchSlider({ own }: { own: SwitchControl }) {
  const { store, dispatch } = useBench();
  const { reference } = own;
  const set = useSession((now) => now.pose.switches?.[reference] ?? own.default);
  if (own.driver) {
    return (
      <p className="wb-note">
        The switch <b>{reference}</b> is driven by {own.driver}.
      </p>
    );
  }
  const value = Math.min(own.max, Math.max(own.min, set));
  const width = own.max - own.min;
  return (
    <Slider
      label={`switch ${reference}`}
      short={reference}
      value={value}
      unit=""
      least={own.min}
      most={own.max}
      step={own.sliding ? Number((width / 20).toPrecision(6)) : width}
      put={(next) => dispatch({ do: 'pose', pose: withSwitch(store.get().pose, reference, next, own.default) })}
    />
  );
}
