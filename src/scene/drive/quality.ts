import type { PictureQuality } from '../../desk/sessionStore';
import type { RigOptions } from '../light/lampRig';

/** What a quality of picture costs. */
export interface Quality {
  readonly rig: RigOptions;
  readonly samples: number;
  readonly mirrorDivisor: number;
  /** Whether the lens's blur and streaks and the sensor's grain are drawn; framing and filter are the same without. */
  readonly lens: boolean;
  readonly mostPixelRatio: number;
}

export const QUALITIES: Readonly<Record<PictureQuality, Quality>> = {
  light: {
    rig: { shadows: 2, shadowTexels: 512, shadowTaps: [4, 6], points: 4 },
    samples: 4,
    mirrorDivisor: 4,
    lens: false,
    mostPixelRatio: 1,
  },
  full: {
    rig: { shadows: 5, shadowTexels: 1024, shadowTaps: [14, 20], points: 12 },
    samples: 4,
    mirrorDivisor: 2,
    lens: true,
    mostPixelRatio: 2,
  },
};

/** The full picture while frames come late: fewer looks for edges and soft shadows, which motion hides. */
export const STRAINED: Quality = {
  ...QUALITIES.full,
  samples: 2,
  rig: { ...QUALITIES.full.rig, shadowTaps: QUALITIES.light.rig.shadowTaps },
};

type Context = WebGLRenderingContext | WebGL2RenderingContext;

/** Whether no graphics card draws: each pixel takes the processor's time. */
export function drawsInSoftware(gl: Context): boolean {
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  return /swiftshader|llvmpipe|software|basic render/i.test(name);
}

const isPhone = (): boolean =>
  matchMedia('(pointer: coarse)').matches && Math.min(screen.width, screen.height) < 600;

/** The quality to begin with: light where no graphics card draws, and on phones. */
export const firstQuality = (gl: Context): PictureQuality =>
  drawsInSoftware(gl) || isPhone() ? 'light' : 'full';
