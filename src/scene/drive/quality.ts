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
    rig: { shadows: 2, shadowTexels: 512, points: 4 },
    samples: 4,
    mirrorDivisor: 4,
    lens: false,
    mostPixelRatio: 1,
  },
  full: {
    rig: { shadows: 4, shadowTexels: 1024, points: 12 },
    samples: 4,
    mirrorDivisor: 2,
    lens: true,
    mostPixelRatio: 2,
  },
};

/** The quality to begin with: light where no graphics card draws, and on phones. */
export function firstQuality(gl: WebGLRenderingContext | WebGL2RenderingContext): PictureQuality {
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  const isSoftware = /swiftshader|llvmpipe|software|basic render/i.test(name);
  const isPhone = matchMedia('(pointer: coarse)').matches && Math.min(screen.width, screen.height) < 600;
  return isSoftware || isPhone ? 'light' : 'full';
}
