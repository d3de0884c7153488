import { atan, exp, hypot, sin, tan } from '../units/steadyMath';

/** An eye and a lamp over a level floor, metres above it, and how far apart over the floor. */
export interface OverFloor {
  readonly eyeMetres: number;
  readonly lampMetres: number;
  readonly apartMetres: number;
}

/** How a highlight lies on a floor. */
export interface Streak {
  /** From the eye's foot towards the lamp's: its near end, where a mirror would have it, its far end; metres. */
  readonly nearMetres: number;
  readonly mirrorMetres: number;
  readonly farMetres: number;
  /** Across, at the mirror's place. */
  readonly widthMetres: number;
  /** Tilt of the way to the eye over the floor at the mirror's place, radians. */
  readonly elevation: number;
}

/** How far a facet at a place has to lean towards the lamp to show it to the eye, radians. */
const leanAt = ({ eyeMetres, lampMetres, apartMetres }: OverFloor, metres: number): number =>
  (atan(eyeMetres / metres) - atan(lampMetres / (apartMetres - metres))) / 2;

/** The slopes with the lamp's own size in them. */
const effectiveSlope = (slope: number, lampRadiusMetres: number, toLampMetres: number): number =>
  hypot(slope, lampRadiusMetres / (4 * toLampMetres));

/** Where a facet has to lean towards the lamp by a tilt, radians, to show it to the eye; metres from the eye's foot. */
function placeWithTilt(over: OverFloor, tilt: number): number {
  const { apartMetres } = over;
  let [low, high] = [0, 1];
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    // Near the eye the way to it is steep and the way to the lamp is not, and the facet leans to the lamp.
    if (leanAt(over, apartMetres * middle) > tilt) low = middle;
    else high = middle;
  }
  return apartMetres * ((low + high) / 2);
}

/**
 * The streak of a lamp on a floor whose slopes spread normally, from half its luminance to half its luminance: where a
 * facet has to lean towards the lamp, or away from it, by √(2 ln 2) times the root mean square slope. In the plane of
 * eye and lamp that is exact; across it, and for grazing ways, small slopes are taken: the streak's length on the floor
 * is 1 ÷ sin² of the elevation times its width, and as it is seen 1 ÷ sin. `lampRadiusMetres`: the lamp's own size adds
 * to the slopes a quarter of its angle, as an even disc's root mean square is half its radius, and a facet turns light
 * twice as far as it leans.
 *
 * Source: [glitter-path], [microfacets]
 */
export function streakOf(over: OverFloor, slope: number, lampRadiusMetres: number): Streak {
  const { eyeMetres, lampMetres, apartMetres } = over;
  const mirrorMetres = (apartMetres * eyeMetres) / (eyeMetres + lampMetres);
  const elevation = atan((eyeMetres + lampMetres) / Math.max(apartMetres, 1e-9));
  const sine = sin(elevation);
  const [toEye, toLamp] = [eyeMetres / sine, lampMetres / sine];
  const effective = effectiveSlope(slope, lampRadiusMetres, toLamp);
  const half = atan(Math.sqrt(2 * Math.LN2) * effective);
  return {
    nearMetres: placeWithTilt(over, half),
    mirrorMetres,
    farMetres: placeWithTilt(over, -half),
    widthMetres: (4 * sine * tan(half)) / (1 / toEye + 1 / toLamp),
    elevation,
  };
}

/**
 * Luminance at the brightest place of a lamp's highlight, cd/m², where its image lies: of its candela I the facets there
 * give L = F I ÷ (A + 8π s² d² sin e), A the area of the lamp's face as the floor sees it, d the way from the lamp to
 * the floor, e the elevation. On a smooth floor that is F times the lamp's own luminance, on a rough one the
 * microfacets' F D E⊥ ÷ (4 sin e). Masking is left out: at the mirror's own angle it is small.
 *
 * Source: [microfacets]
 */
export const highlightLuminance = (
  reflectance: number,
  candela: number,
  areaSquareMetres: number,
  slope: number,
  toLampMetres: number,
  elevation: number,
): number =>
  (reflectance * candela) /
  (areaSquareMetres + 8 * Math.PI * slope * slope * toLampMetres * toLampMetres * sin(elevation));

/**
 * What is left of a highlight's luminance at a place along the way from the eye's foot to the lamp's, metres, as a share
 * of that at the mirror's place: exp(−tan² of the lean ÷ 2 s²).
 *
 * Source: [microfacets]
 */
export function leftAlong(over: OverFloor, metres: number, slope: number, lampRadiusMetres: number): number {
  const toLamp = hypot(over.lampMetres, over.apartMetres - metres);
  const lean = tan(leanAt(over, metres)) / effectiveSlope(slope, lampRadiusMetres, toLamp);
  return lean * lean > 1200 ? 0 : exp((-lean * lean) / 2);
}
