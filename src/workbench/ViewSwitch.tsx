import { useBench, useSession } from './state/bench.ts';
import { nextRedo, nextUndo } from './state/history.ts';
import type { View } from './state/session.ts';

/** Build and Try, and undo and redo beside them. */
export function ViewSwitch({ views }: { views: readonly View[] }) {
  const { dispatch } = useBench();
  const chosen = useSession((session) => session.view);
  const undo = useSession((session) => nextUndo(session.history));
  const redo = useSession((session) => nextRedo(session.history));
  return (
    <div className="wb-switch">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be set as a line of text */}
      <p role="group" aria-label="Build or try" hidden={views.length === 0}>
        {views.map((view) => (
          <button
            key={view}
            type="button"
            aria-pressed={chosen === view}
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
