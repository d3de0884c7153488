import { polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';

interface BeanProps {
  readonly at: Spot;
  readonly headingDegrees: number;
  /** Half of its length across the heading, and of its width along it, metres. */
  readonly half: readonly [number, number];
}

/** A sandbag: a bean, narrow where its strap lies over the leg. */
export function Bean({ at, headingDegrees, half: [half, deep] }: BeanProps) {
  const own = (x: number, z: number): string => standing(at, headingDegrees, [x * half, z * deep]).join(' ');
  return (
    <>
      <path
        className="item bag"
        d={
          `M${own(-0.95, 0)}C${own(-1.05, -1.3)} ${own(-0.3, -1.1)} ${own(0, -0.6)}` +
          `C${own(0.3, -1.1)} ${own(1.05, -1.3)} ${own(0.95, 0)}` +
          `C${own(1.05, 1.3)} ${own(0.3, 1.1)} ${own(0, 0.8)}` +
          `C${own(-0.3, 1.1)} ${own(-1.05, 1.3)} ${own(-0.95, 0)}Z`
        }
      />
      <path
        className="hair"
        d={polyline([
          standing(at, headingDegrees, [0, -deep * 0.6]),
          standing(at, headingDegrees, [0, deep * 0.8]),
        ])}
      />
    </>
  );
}
