import { moveInOrder } from '../edit/respond.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { orderAsked } from './order.ts';

/** Names to be put in order, one step at a time. */
export function OrderForm({ disabled }: { disabled: boolean }) {
  const { exercise, edit } = useBench();
  const order = useSession(draftOf).response?.order ?? orderAsked(exercise);
  return (
    <ol className="wb-order">
      {order.map((name, i) => (
        <li key={name}>
          <b>{name}</b>{' '}
          <span className="wb-asides">
            <button
              type="button"
              className="wb-aside"
              aria-label={`Move ${name} up`}
              disabled={disabled || i === 0}
              onClick={() => edit(moveInOrder(order, name, -1), 'order')}
            >
              up
            </button>
            <button
              type="button"
              className="wb-aside"
              aria-label={`Move ${name} down`}
              disabled={disabled || i === order.length - 1}
              onClick={() => edit(moveInOrder(order, name, 1), 'order')}
            >
              down
            </button>
          </span>
        </li>
      ))}
    </ol>
  );
}
