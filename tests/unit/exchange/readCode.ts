import jsQR from 'jsqr';

/** Free squares round a code, and pixels of a square. */
const [QUIET, PIXELS] = [4, 4];

/** What a reader of codes that has no line of the writer's reads off squares; null where it reads none. */
export function readCode(size: number, isDark: (x: number, y: number) => boolean): string | null {
  const side = (size + 2 * QUIET) * PIXELS;
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (isDark(Math.floor(x / PIXELS) - QUIET, Math.floor(y / PIXELS) - QUIET))
        data.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  return jsQR(data, side, side)?.data ?? null;
}
