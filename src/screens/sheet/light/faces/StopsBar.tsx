import { BAR, barEnd, tickAt } from './levelBar';

const TICKS = Array.from({ length: 2 * BAR.mostStops + 1 }, (_, k) => k - BAR.mostStops);

/** How far a level is from the set stop: a bar from the middle, a tick for each stop. The number stands beside it. */
export function StopsBar({ stops }: { readonly stops: number }) {
  const { x, beyond } = barEnd(stops);
  const middle = tickAt(0);
  return (
    <svg className="stops-bar" viewBox={`0 0 ${BAR.width} 16`} aria-hidden="true">
      <path className="axis" d={`M${tickAt(-BAR.mostStops)} 8.5H${tickAt(BAR.mostStops)}`} />
      {TICKS.map((stop) => (
        <path
          key={stop}
          className={stop === 0 ? 'tick zero' : 'tick'}
          d={stop === 0 ? `M${middle} 1v15` : `M${tickAt(stop)} 6v5`}
        />
      ))}
      <path className="level" d={`M${middle} 8.5H${x}`} />
      {beyond === 0 ? (
        <circle className="end" cx={x} cy="8.5" r="3.5" />
      ) : (
        <path className="end" d={`M${x - beyond * 2} 4.5L${x + beyond * 5} 8.5L${x - beyond * 2} 12.5Z`} />
      )}
    </svg>
  );
}
