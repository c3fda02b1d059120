import type { Vec3 } from '../../../solver/document/rig.ts';
import { type Grip, handleName } from '../grip.ts';
import type { Pixel } from '../placeLabels.ts';
import { applied, coordinatesIn } from '../restFrame.ts';
import { plus } from '../vector.ts';
import { project, unproject, type View } from '../view.ts';
import { Bead } from './Bead.tsx';
import { Disc } from './Disc.tsx';
import { Protractor } from './Protractor.tsx';
import { beadFrom, runOf } from './places.ts';

export type HandleMode = 'move' | 'turn x' | 'turn y' | 'turn z';

interface Props {
  grip: Grip;
  mode: HandleMode;
  view: View;
  /** Metres that a bead may go from 0. */
  reach: number;
  put: (channel: 'move' | 'turn', values: Vec3) => void;
}

/** The handles of the chosen bone: a disc and three rails to move it, or one protractor to turn it. */
export function Handles(props: Props) {
  const [x, y] = project(props.view, props.grip.origin);
  return (
    <g transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}>
      <HandlesHere {...props} origin={[x, y]} />
    </g>
  );
}

/** Drawn round (0, 0), so that a bone that moves takes them along as they are; `origin` is where that is, in pixels. */
function HandlesHere({ grip, mode, view, reach, put, origin }: Props & { origin: Pixel }) {
  if (mode !== 'move') {
    const i = 'xyz'.indexOf(mode.slice(-1)) as 0 | 1 | 2;
    if (!grip.turn.free[i]) return null;
    return (
      <Protractor
        label={handleName(grip, 'turn', i)}
        letter={'xyz'[i]!}
        value={Number(grip.turn.values[i].toFixed(2))}
        axis={grip.turn.axes[i]}
        view={view}
        put={(value) => put('turn', grip.turn.values.with(i, value) as unknown as Vec3)}
      />
    );
  }
  const { axes, values, free } = grip.move;
  const step = stepFor(view);
  return (
    <>
      {([0, 1, 2] as const).map(
        (i) =>
          free[i] && (
            <Bead
              key={i}
              label={handleName(grip, 'move', i)}
              letter={'xyz'[i]!}
              value={values[i]}
              unit="metres"
              step={step}
              least={-reach}
              most={reach}
              run={runOf(axes[i], view)}
              from={beadFrom(runOf(axes[i], view), origin, view)}
              put={(value) => put('move', values.with(i, value) as unknown as Vec3)}
            />
          ),
      )}
      {free.some(Boolean) && (
        <Disc bone={grip.bone} values={values as [number, number, number]} step={8} slide={slide} />
      )}
    </>
  );

  function slide(from: Vec3, dx: number, dy: number) {
    const to = plus(applied(axes, from), unproject(view, dx, dy));
    const moved = coordinatesIn(axes, to);
    const whole = from.map((value, i) => (free[i] ? snapped(moved[i]!) : value)) as unknown as Vec3;
    put('move', whole);
  }

  function snapped(value: number): number {
    return Number(Math.min(reach, Math.max(-reach, Math.round(value / step) * step)).toPrecision(9));
  }
}

/** A round length of one or two pixels, and never more than a centimetre's worth of a small rig. */
function stepFor(view: View): number {
  return 10 ** Math.floor(Math.log10(2.5 / view.scale));
}
