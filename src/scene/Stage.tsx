import { useEffect, useState } from 'react';
import { BasicShadowMap, FogExp2, NoToneMapping } from 'three';
import { HAZE_PER_METRE } from '../core/light/surroundings';
import { readPreference } from '../desk/preferences';
import { sessionStore } from '../desk/sessionStore';
import { viewStore } from '../desk/viewStore';
import { offersWebGl } from './drive/offersWebGl';
import { PlaySpeed } from './drive/PlaySpeed';
import { firstQuality } from './drive/quality';
import { RenderDriver } from './drive/RenderDriver';
import { HAZE_COLOUR } from './light/sky';
import { StageCanvas, type StageSettings } from './StageCanvas';

const NO_WEBGL =
  'This browser offers no WebGL 2, so there are no pictures; the overhead and the findings work without them.';

/** Behind the page's HTML, over the whole window; it takes no pointer. */
const BEHIND = { position: 'fixed', inset: 0, zIndex: 0, pointerEvents: 'none' } as const;

const SETTINGS: StageSettings = {
  frameloop: 'demand',
  dpr: [1, 2],
  shadows: { type: BasicShadowMap },
  gl: { antialias: false, alpha: true, powerPreference: 'high-performance' },
  onCreated: ({ gl, scene }) => {
    gl.toneMapping = NoToneMapping;
    scene.fog = new FogExp2(0, HAZE_PER_METRE);
    scene.fog.color.setRGB(HAZE_COLOUR.x, HAZE_COLOUR.y, HAZE_COLOUR.z);
    if (readPreference('picture', ['light', 'full']) === null) {
      sessionStore.setState({ pictureQuality: firstQuality(gl.getContext()) });
    }
  },
};

const DRAWING = (
  <>
    <RenderDriver />
    <PlaySpeed />
  </>
);

/**
 * The night roof as it is drawn: one canvas for the life of the page, under the HTML. The frame and the walk-round
 * appear where viewStore's elements lie, the thumbnails on its canvases. Says in viewStore why there is no picture.
 */
export function Stage() {
  const [works] = useState(offersWebGl);
  useEffect(() => {
    if (!works) viewStore.getState().setPictureRefused(NO_WEBGL);
  }, [works]);
  if (!works) return null;
  return (
    <div style={BEHIND} aria-hidden="true">
      <StageCanvas settings={SETTINGS}>{DRAWING}</StageCanvas>
    </div>
  );
}
