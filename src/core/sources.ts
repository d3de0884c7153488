/** Where a formula or a number comes from. A docstring or a data entry cites the key; a test ties the two. */
export interface Source {
  readonly title: string;
  readonly where: string;
  /** How it was got: read there, computed by a named package, or from memory. */
  readonly seen: 'read' | 'package' | 'memory' | 'common practice, no source';
}

export const SOURCES = {
  'field-size': {
    title: 'Lens angle and field of view: tan(half) = (A/2 × squeeze) / f (handbook text copy)',
    where: 'jukolart.us/cinematographic-systems/lens-angle-and-field-of-view.html',
    seen: 'read',
  },
  'opencv-calib3d': {
    title: 'OpenCV 4.6 camera calibration and 3D reconstruction: pinhole model with k1 k2 k3 p1 p2',
    where: 'python3-opencv 4.6.0+dfsg-12, npm @techstark/opencv-js 4.12.0-release.1',
    seen: 'package',
  },
  'safe-areas': {
    title:
      'Illustrated dictionary of moving image technology, 4th ed., appendix B: safe areas; the standard is SMPTE ST 2046-1',
    where: 'oreilly.com 9780240516325, appendix B',
    seen: 'read',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
