import { CONTINUOUS_SHARE } from '../../../../core/power/ratings';
import './loadBar.css';

/** As far as the bar goes, of a rating: what is beyond ends in an arrow. */
const MOST = 1.25;
const WIDTH = 250;
const xOf = (share: number): number => Math.min(Math.max(share, 0), MOST) * (WIDTH / MOST);

/**
 * How much of a rating is drawn: a bar with a tick at 80 %, what is good for three hours and more, and an end at 100 %.
 * Over that it goes on hatched, with an arrow where it leaves the bar. The number stands beside it.
 */
export function LoadBar({ share }: { readonly share: number }) {
  const [end, line, full] = [xOf(share), xOf(CONTINUOUS_SHARE), xOf(1)];
  return (
    <svg
      className={share > 1 ? 'load-bar over' : share > CONTINUOUS_SHARE ? 'load-bar much' : 'load-bar'}
      viewBox={`0 0 ${WIDTH + 8} 14`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path className="axis" d={`M0 7.5H${WIDTH}`} />
      <path className="load" d={`M0 7.5H${Math.min(end, full)}`} />
      {share > 1 && <path className="beyond" d={`M${full} 7.5H${end}`} />}
      <path className="eighty" d={`M${line} 1v13`} />
      <path className="full" d={`M${full} 1v13`} />
      {share > MOST && <path className="arrow" d={`M${WIDTH} 2.5l7 5l-7 5z`} />}
    </svg>
  );
}
