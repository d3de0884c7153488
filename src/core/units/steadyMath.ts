/**
 * Trigonometry, logarithms and roots that give the same bits on every machine. The language leaves sin, atan2, hypot
 * and their like to the engine, and engines differ in the last bit from one version to the next; what is worked out
 * in Node, in a worker and in the page has to be the same to the byte. Only + − × ÷ and the square root are used here,
 * which IEEE 754 fixes. Errors stay below two units in the last place for the arguments of this program.
 *
 * Source: [fdlibm]
 */

/** π/2 in three pieces, so that taking many of it away keeps the digits. */
const QUARTER_HIGH = 1.5707963267341256;
const QUARTER_MIDDLE = 6.077100506303966e-11;
const QUARTER_LOW = 2.0222662487959506e-21;
const QUARTERS_PER_RADIAN = 0.6366197723675814;

/** Sine of an angle within ±π/4. */
function sinNear(x: number): number {
  const z = x * x;
  const tail =
    0.00833333333332249 +
    z *
      (-0.0001984126982985795 +
        z * (0.0000027557313707070068 + z * (-2.5050760253406863e-8 + z * 1.58969099521155e-10)));
  return x + z * x * (-0.16666666666666632 + z * tail);
}

/** Cosine of an angle within ±π/4. */
function cosNear(x: number): number {
  const z = x * x;
  const tail =
    z *
    (0.0416666666666666 +
      z *
        (-0.001388888888887411 +
          z *
            (0.00002480158728947673 +
              z * (-2.7557314351390663e-7 + z * (2.087572321298175e-9 + z * -1.1359647557788195e-11)))));
  const half = 0.5 * z;
  const rest = 1 - half;
  return rest + (1 - rest - half + z * tail);
}

/** An angle as a number of right angles, and what is left of it, within ±π/4. */
function quartersOf(x: number): { readonly quarters: number; readonly rest: number } {
  const quarters = Math.round(x * QUARTERS_PER_RADIAN);
  return {
    quarters: ((quarters % 4) + 4) % 4,
    rest: x - quarters * QUARTER_HIGH - quarters * QUARTER_MIDDLE - quarters * QUARTER_LOW,
  };
}

/** Sine of an angle in radians, up to a million of them either way. */
export function sin(x: number): number {
  const { quarters, rest } = quartersOf(x);
  if (quarters === 0) return sinNear(rest);
  if (quarters === 1) return cosNear(rest);
  return quarters === 2 ? -sinNear(rest) : -cosNear(rest);
}

/** Cosine of an angle in radians, up to a million of them either way. */
export function cos(x: number): number {
  const { quarters, rest } = quartersOf(x);
  if (quarters === 0) return cosNear(rest);
  if (quarters === 1) return -sinNear(rest);
  return quarters === 2 ? -cosNear(rest) : sinNear(rest);
}

/** Tangent of an angle in radians. */
export const tan = (x: number): number => sin(x) / cos(x);

const ATAN_HIGH = [0.4636476090008061, 0.7853981633974483, 0.982793723247329, 1.5707963267948966];
const ATAN_LOW = [
  2.2698777452961687e-17, 3.061616997868383e-17, 1.3903311031230998e-17, 6.123233995736766e-17,
];

/** Arc of a tangent, radians, −π/2 … π/2. */
export function atan(tangent: number): number {
  if (Number.isNaN(tangent)) return tangent;
  const size = Math.abs(tangent);
  let x = size;
  let table = -1;
  if (size >= 2.4375) {
    table = 3;
    x = -1 / size;
  } else if (size >= 1.1875) {
    table = 2;
    x = (size - 1.5) / (1 + 1.5 * size);
  } else if (size >= 0.6875) {
    table = 1;
    x = (size - 1) / (size + 1);
  } else if (size >= 0.4375) {
    table = 0;
    x = (2 * size - 1) / (2 + size);
  }
  const z = x * x;
  const w = z * z;
  const odd =
    z *
    (0.3333333333333293 +
      w *
        (0.14285714272503466 +
          w *
            (0.09090887133436507 +
              w * (0.06661073137387531 + w * (0.049768779946159324 + w * 0.016285820115365782)))));
  const even =
    w *
    (-0.19999999999876483 +
      w *
        (-0.11111110405462356 +
          w * (-0.0769187620504483 + w * (-0.058335701337905735 + w * -0.036531572744216916))));
  const arc = table < 0 ? x - x * (odd + even) : ATAN_HIGH[table] - (x * (odd + even) - ATAN_LOW[table] - x);
  return tangent < 0 ? -arc : arc;
}

/** Direction of (x, y) from the positive x axis, radians, −π … π; 0 for no direction at all. */
export function atan2(y: number, x: number): number {
  if (x > 0) return atan(y / x);
  if (x < 0) return y >= 0 ? Math.PI + atan(y / x) : atan(y / x) - Math.PI;
  if (y === 0) return 0;
  return y > 0 ? Math.PI / 2 : -Math.PI / 2;
}

/** Arc of a sine, radians; what is a hair beyond ±1 counts as ±1. */
export const asin = (sine: number): number => {
  const x = Math.max(-1, Math.min(1, sine));
  return atan2(x, Math.sqrt((1 - x) * (1 + x)));
};

/** Arc of a cosine, radians; what is a hair beyond ±1 counts as ±1. */
export const acos = (cosine: number): number => {
  const x = Math.max(-1, Math.min(1, cosine));
  return atan2(Math.sqrt((1 - x) * (1 + x)), x);
};

/** Length of a vector of two or three numbers. */
export const hypot = (x: number, y: number, z = 0): number => Math.sqrt(x * x + y * y + z * z);

const { LN2 } = Math;
/** The same in two pieces. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;

/** 2 to a whole power, by doubling and halving, which are exact. */
function powerOfTwo(exponent: number): number {
  let value = 1;
  for (let k = 0; k < Math.abs(exponent); k += 1) value *= exponent < 0 ? 0.5 : 2;
  return value;
}

/** e to a power between −700 and 700. */
export function exp(x: number): number {
  const doublings = Math.round(x / LN2);
  const rest = x - doublings * LN2_HIGH - doublings * LN2_LOW;
  let sum = 1;
  for (let term = 18; term >= 1; term -= 1) sum = 1 + (rest / term) * sum;
  return sum * powerOfTwo(doublings);
}

/** Natural logarithm of a positive number. */
export function log(x: number): number {
  let doublings = 0;
  let rest = x;
  while (rest > Math.SQRT2) {
    rest *= 0.5;
    doublings += 1;
  }
  while (rest < Math.SQRT1_2) {
    rest *= 2;
    doublings -= 1;
  }
  // ln r = 2 artanh((r − 1)/(r + 1)).
  const t = (rest - 1) / (rest + 1);
  const z = t * t;
  let sum = 0;
  for (let odd = 33; odd >= 1; odd -= 2) sum = 1 / odd + z * sum;
  return doublings * LN2 + 2 * t * sum;
}

/** Cube root of a number that is not negative, by Newton's method. */
export function cbrt(x: number): number {
  if (x === 0) return 0;
  let scale = 1;
  let rest = x;
  while (rest > 8) {
    rest *= 0.125;
    scale *= 2;
  }
  while (rest < 1) {
    rest *= 8;
    scale *= 0.5;
  }
  let root = 1.5;
  for (let step = 0; step < 8; step += 1) root -= (root - rest / (root * root)) / 3;
  return root * scale;
}

/** A number that is not negative, to any power. */
export function pow(base: number, exponent: number): number {
  if (exponent === 0) return 1;
  return base === 0 ? 0 : exp(exponent * log(base));
}
