import type { Underlay } from '../../../core/plan/schema/drawing';
import { useAsset } from '../../../desk/assets/useAsset';
import '../styles/underlay.css';

/** The photo or drawing that lies under the roof's ink, to scale; only its edge while its file is not there. */
export function UnderlayLayer({ underlay }: { readonly underlay: Underlay }) {
  const { asset, pixels, at, headingDegrees, metresPerPixel, strength } = underlay;
  const state = useAsset(asset.sha256);
  const [width, height] = [pixels[0] * metresPerPixel, pixels[1] * metresPerPixel];
  const box = { x: -width / 2, y: -height / 2, width, height };
  return (
    <g className="underlay" transform={`translate(${at[0]} ${at[1]}) rotate(${headingDegrees})`}>
      {state.status === 'picture' ? (
        <image href={state.url} {...box} preserveAspectRatio="none" opacity={strength} />
      ) : (
        <rect className="underlay-missing" {...box} />
      )}
    </g>
  );
}
