import { useBench } from './state/bench.ts';
import { nextRedo, nextUndo } from './state/history.ts';
import type { View } from './state/session.ts';

/** Build and Try, and undo and redo beside them. */
export function ViewSwitch({ views }: { views: readonly View[] }) {
  const { session, dispatch } = useBench();
  const undo = nextUndo(session.history);
  const redo = nextRedo(session.history);
  return (
    <div className="wb-switch">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be set as a line of text */}
      <p role="group" aria-label="Build or try" hidden={views.length === 0}>
        {views.map((view) => (
          <button
            key={view}
            type="button"
            aria-pressed={session.view === view}
            onClick={() => dispatch({ do: 'view', view })}
          >
            {view === 'build' ? 'Build' : 'Try'}
          </button>
        ))}
      </p>
      <p className="wb-steps">
        <button type="button" disabled={undo === undefined} title={undo} onClick={() => dispatch({ do: 'undo' })}>
          Undo
        </button>
        <button type="button" disabled={redo === undefined} title={redo} onClick={() => dispatch({ do: 'redo' })}>
          Redo
        </button>
      </p>
    </div>
  );
}
