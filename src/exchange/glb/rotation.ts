import { cross, frameAround, scale, type Vec3 } from '../../core/form/build/vector';

/**
 * The unit quaternion [x, y, z, w] that turns what looks along −z with y up so that it looks along `forward`
 * with `up` upwards. The three are unit vectors, square to each other.
 * From memory: a rotation matrix to a quaternion, by its largest diagonal term.
 */
export function rotationOf(right: Vec3, up: Vec3, forward: Vec3): [number, number, number, number] {
  const [xx, xy, xz] = right;
  const [yx, yy, yz] = up;
  const [zx, zy, zz] = scale(forward, -1);
  const squares = [1 + xx - yy - zz, 1 - xx + yy - zz, 1 - xx - yy + zz, 1 + xx + yy + zz];
  const largest = squares.indexOf(Math.max(...squares));
  const twice = Math.sqrt(squares[largest]);
  const [a, b, c] = [yz - zy, zx - xz, xy - yx];
  const [d, e, f] = [xy + yx, zx + xz, yz + zy];
  const quaternions = [
    [twice * twice, d, e, a],
    [d, twice * twice, f, b],
    [e, f, twice * twice, c],
    [a, b, c, twice * twice],
  ];
  const [x, y, z, w] = quaternions[largest];
  const size = Math.sqrt(x * x + y * y + z * z + w * w);
  return [x / size, y / size, z / size, w / size];
}

/** The same for something that has a direction but no up of its own, such as a round lamp. */
export function rotationTowards(forward: Vec3): [number, number, number, number] {
  const back = scale(forward, -1);
  const [right] = frameAround(back);
  return rotationOf(right, cross(back, right), forward);
}
