import { formatNumber, NBSP } from '../../../core/units/numbers';
import { useDrawn } from './drawing';
import { momentsBetween, rulerOf, xOf } from './scale';

/** Seconds along the upper edge, numbered as closely as there is room for. */
export function Ruler() {
  const { scale, left, right } = useDrawn();
  const { every, smallEvery, decimals } = rulerOf(scale);
  return (
    <div className="ruler" aria-hidden="true">
      {momentsBetween(scale, smallEvery, left, right).map((seconds) => (
        <i key={seconds} className="small" style={{ left: xOf(scale, seconds) }} />
      ))}
      {momentsBetween(scale, every, left, right).map((seconds) => (
        <span key={seconds} style={{ left: xOf(scale, seconds) }}>
          {formatNumber(seconds, decimals)}
          {NBSP}s
        </span>
      ))}
    </div>
  );
}
