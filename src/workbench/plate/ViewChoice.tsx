import { NumberWord } from '../words/NumberWord.tsx';
import { type Look, VIEWS } from './view.ts';

interface Props {
  look: Look;
  setLook: (look: Look) => void;
  /** Brings the pose as it is into the view. */
  refit: () => void;
  /** How far the ticks stand apart. */
  tick: string;
}

/** From where the plate is seen, in words. */
export function ViewChoice({ look, setLook, refit, tick }: Props) {
  const zoom = (by: number) => setLook({ ...look, zoom: Math.min(16, Math.max(0.25, look.zoom * by)) });
  function fitAll() {
    setLook({ ...look, zoom: 1 });
    refit();
  }
  return (
    <div className="wb-views">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be set as a line of text */}
      <p role="group" aria-label="View">
        {VIEWS.map(({ name, says }) => (
          <button
            key={name}
            type="button"
            aria-pressed={look.view === name}
            onClick={() => setLook({ ...look, view: name })}
          >
            {says}
          </button>
        ))}
        <button type="button" onClick={() => zoom(1.25)}>
          Nearer
        </button>
        <button type="button" onClick={() => zoom(0.8)}>
          Farther
        </button>
        <button type="button" onClick={fitAll}>
          Fit
        </button>
      </p>
      <p className="wb-note">
        {look.view === 'free' && (
          <>
            Seen from{' '}
            <NumberWord
              label="turn of the view round"
              value={look.round}
              unit="°"
              step={5}
              put={(round) => setLook({ ...look, round })}
            />{' '}
            round and{' '}
            <NumberWord
              label="turn of the view up"
              value={look.rise}
              unit="°"
              step={5}
              least={-90}
              most={90}
              put={(rise) => setLook({ ...look, rise })}
            />{' '}
            up.{' '}
          </>
        )}
        Ticks every {tick}.
      </p>
    </div>
  );
}
