import type { GlowFace } from './glowFace';

/** The area of a lamp's face as it looks along a way, m². */
export function glowFaceArea({ outline, halfWidth, halfHeight }: GlowFace, cosine: number): number {
  if (outline === 'ball') return Math.PI * halfWidth * halfHeight;
  const flat = (outline === 'square' ? 4 : Math.PI) * halfWidth * halfHeight;
  return flat * Math.max(0.02, cosine);
}
