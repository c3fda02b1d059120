/** Says to the other tabs of the course what has been kept; undefined where tabs cannot hear each other. */
export function openChannel(of: 'works' | 'versions'): BroadcastChannel | undefined {
  return typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(`counterpose ${of}`);
}
