import { drawsInSoftware, firstQuality, QUALITIES, type Quality } from '../drive/quality';

/** How well the crew's pictures are drawn. */
export interface CrewQuality {
  /** While a move plays or a hand turns. */
  readonly moving: Quality;
  readonly resting: Quality;
  /** Pixels along a still's width. */
  readonly stillWidth: number;
}

/** A phone's card draws the lens too, once everything rests: the lamps stay the light picture's, which cost it most. */
const PHONE: CrewQuality = {
  moving: QUALITIES.light,
  resting: { ...QUALITIES.light, lens: true, mirrorDivisor: 2, mostPixelRatio: 2 },
  stillWidth: 800,
};

/** What a card can do: all of it on a desk, on a phone with few lamps' shadows, without a card the light picture. */
export function crewQuality(gl: WebGLRenderingContext | WebGL2RenderingContext): CrewQuality {
  if (drawsInSoftware(gl)) return { moving: QUALITIES.light, resting: QUALITIES.light, stillWidth: 480 };
  const first = QUALITIES[firstQuality(gl)];
  return first.lens ? { ...PHONE, moving: first, resting: first } : PHONE;
}
