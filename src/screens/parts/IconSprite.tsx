import { ICONS } from './icons/icons';

/** The icons, drawn once per page and used by id. */
export function IconSprite() {
  return (
    <svg className="vh" aria-hidden="true">
      {Object.entries(ICONS).map(([name, { lines, rings = [], point }]) => (
        <symbol key={name} id={`i-${name}`} viewBox="0 0 24 24">
          <path d={lines} />
          {rings.map(([x, y, radius]) => (
            <circle key={`${x} ${y} ${radius}`} cx={x} cy={y} r={radius} />
          ))}
          <circle className="pt" cx={point[0]} cy={point[1]} r={point[2]} />
        </symbol>
      ))}
    </svg>
  );
}
