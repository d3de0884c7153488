import { SOURCES_OF_CAUTIONS } from './sourcesOfCautions';
import { SOURCES_OF_LIGHT } from './sourcesOfLight';
import { SOURCES_OF_NIGHT } from './sourcesOfNight';
import { SOURCES_OF_POWER } from './sourcesOfPower';

/** Where a formula or a number comes from. A docstring or a data entry cites the key; a test ties the two. */
export interface Source {
  readonly title: string;
  readonly where: string;
  /** How it was got: read there, computed by a named package, or from memory. */
  readonly seen: 'read' | 'package' | 'memory' | 'common practice, no source';
}

/** The bibliography, by the keys that docstrings and data cite. */
export const SOURCES = {
  ...SOURCES_OF_LIGHT,
  ...SOURCES_OF_NIGHT,
  ...SOURCES_OF_CAUTIONS,
  ...SOURCES_OF_POWER,
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
  meeus: {
    title:
      'Astronomical algorithms, 2nd ed.: Julian day (ch. 7), rising (15), refraction (16), nutation (22), sun (25), parallax (40), moon (47); the larger terms, checked against astronomy-engine 2.1.19',
    where: 'the book; not looked up',
    seen: 'memory',
  },
  hyperfocal: {
    title:
      'Cameras and Lenses: the essential reference guide for filmmakers (slides): H = f²/(N c), with a table',
    where: 'slideplayer.com/amp/5823246',
    seen: 'read',
  },
  'depth-of-field': {
    title:
      'Thin-lens depth of field, near = s(H − f)/(H + s − 2f), far = s(H − f)/(H − s), and the blur that they follow from',
    where: 'handbooks; not looked up',
    seen: 'memory',
  },
  'circle-of-confusion': {
    title: 'Depth of field calculations (handbook text copy): 35 mm 0.001 in, 16 mm 0.0006 in',
    where: 'jukolart.us/cinematographic-systems/depth-of-field-calculations.html',
    seen: 'read',
  },
  'film-base': {
    title:
      'Acetate film base: 0.13 mm thick, refractive index 1.48; total reflection from the critical angle on',
    where: 'handbooks; not looked up',
    seen: 'memory',
  },
  'framing-cuts': {
    title:
      'Basic framing examples: mid shot at the waist, medium close-up at the breast pocket, close-up at the tie knot, cowboy at mid-thigh',
    where: 'cinematography.net/Lessons/Basic Framing Examples.html',
    seen: 'read',
  },
  'ansur-ii': {
    title:
      'ANSUR II, 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007: means computed from the public data, 4,082 men and 1,986 women',
    where: 'ANSUR_II_MALE_Public.csv, ANSUR_II_FEMALE_Public.csv (github.com/coleharlow12/ANSURDataAnalysis)',
    seen: 'read',
  },
  'bodyspace-eye-height': {
    title: 'Online anthropometry, eye height and stature of British adults (Bodyspace tables)',
    where: 'personal.cityu.edu.hk/meachan/Online Anthropometry/Chapter2/Ch2-1.htm and Ch2-2.htm',
    seen: 'read',
  },
  'ray-triangle': {
    title:
      'T. Möller, B. Trumbore: Fast, minimum storage ray/triangle intersection, Journal of Graphics Tools 2(1), 1997',
    where: 'Journal of Graphics Tools',
    seen: 'memory',
  },
  'full-aperture': {
    title: 'Practical Cinematography, 2nd ed., ch. 20: 35 mm full (silent) aperture 0.980 × 0.735 in',
    where: 'oreilly.com/library/view/practical-cinematography-2nd/9780240519623',
    seen: 'read',
  },
  'academy-aperture': {
    title: 'Film preservation glossary, “Academy frame”: camera aperture 22.05 × 16.03 mm',
    where: 'nfsa.gov.au',
    seen: 'read',
  },
  'anamorphic-aperture': {
    title:
      '35 mm film, technical specifications (copy of an encyclopedia): anamorphic camera aperture 0.866 × 0.732 in',
    where: 'liquisearch.com/35_mm_film/technical_specifications',
    seen: 'read',
  },
  'still-frame': {
    title:
      'Illustrated dictionary of moving image technology, 4th ed., appendix C: still frame 36.0 × 24.0 mm',
    where: 'oreilly.com 9780240516325, appendix C',
    seen: 'read',
  },
  'sixteen-aperture': {
    title: 'A list for colourists, 1998: 16 mm camera aperture 0.404 × 0.295 in',
    where: 'colorist.org/archives/oldtig_mhonarc/1998/msg01075.html',
    seen: 'read',
  },
  'gates-from-memory': {
    title: 'Trade figures for gates: 3-perf, 2-perf, Super 16, micro four thirds, 65 mm',
    where: 'not looked up',
    seen: 'memory',
  },
  'lens-classes': {
    title: 'Focal lengths, stops and close focus as sets of lenses commonly have them; no single lens',
    where: 'no publication',
    seen: 'common practice, no source',
  },
  'head-classes': {
    title: 'Lamps as their kinds commonly are: watts, candela, beam, size; no single lamp',
    where: 'no publication',
    seen: 'common practice, no source',
  },
  'stand-classes': {
    title: 'Stands as their kinds commonly are: reach, footprint, tubes; no single stand',
    where: 'no publication',
    seen: 'common practice, no source',
  },
  'support-classes': {
    title: 'What carries a camera, as its kind commonly is: how low, how high, how far; no single model',
    where: 'no publication',
    seen: 'common practice, no source',
  },
  'van-der-corput': {
    title:
      'J. G. van der Corput: Verteilungsfunktionen, 1935: the radical inverse as an evenly spread sequence',
    where: 'Proceedings of the Koninklijke Akademie van Wetenschappen te Amsterdam 38',
    seen: 'memory',
  },
  'solid-bsp': {
    title:
      'W. C. Thibault, B. F. Naylor: Set operations on polyhedra using binary space partitioning trees, 1987: cut along the planes of its faces, a solid falls into convex cells',
    where: 'Computer Graphics 21 (4); not looked up',
    seen: 'memory',
  },
  'monotone-chain': {
    title: 'A. M. Andrew: Another efficient algorithm for convex hulls in two dimensions, 1979',
    where: 'Information Processing Letters 9 (5)',
    seen: 'memory',
  },
  png: {
    title:
      'Portable Network Graphics specification: chunks, their CRC (polynomial EDB88320, reflected), tEXt and iTXt',
    where: 'w3.org/TR/png; not looked up',
    seen: 'memory',
  },
  fdl: {
    title:
      'ASC Framing Decision List, specification and JSON schema 2.0.1: canvases, framing intents of whole numbers, framing decisions',
    where: 'github.com/ascmitc/fdl, Specification/ASCFDL_Specification_v2.0.1.md, schema/v2.0.1',
    seen: 'read',
  },
  'usd-camera': {
    title:
      'OpenUSD, UsdGeomCamera: apertures and focal length in tenths of a scene unit, distances in scene units',
    where: 'openusd.org/release/api/class_usd_geom_camera.html',
    seen: 'read',
  },
  fdlibm: {
    title:
      'Freely Distributable LIBM, Sun Microsystems, 1993: reduction and coefficients of sine, cosine and arc tangent',
    where: 'netlib.org/fdlibm, k_sin.c, k_cos.c, s_atan.c',
    seen: 'memory',
  },
  'centripetal-curve': {
    title:
      'C. Yuksel, S. Schaefer, J. Keyser: Parameterization and applications of Catmull-Rom curves: centripetal knots alone give no cusps or crossings within a piece (abstract)',
    where: 'Computer-Aided Design 43, 2011, 747–755; doi 10.1145/1629255.1629262',
    seen: 'read',
  },
  'walking-speed': {
    title:
      'R. W. Bohannon: Comfortable and maximum walking speed of adults aged 20–79 years: comfortable 1.27 to 1.46 m/s, fastest 1.75 to 2.53 m/s, by age and sex (abstract)',
    where: 'Age and Ageing 26, 1997, 15–19; pubmed.ncbi.nlm.nih.gov/9143432',
    seen: 'read',
  },
  'walk-to-run': {
    title:
      'Preferred transition from walking to running in children and adolescents: adults change over at about 2 m/s',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC8629136',
    seen: 'read',
  },
  'sprint-speed': {
    title:
      'Norms of running speed: boys under 14 who play football, 10 m from standing at 5.18 m/s on average',
    where: 'help.plantiga.com/run-maximum-speed, table 19 (Mendez-Villanueva et al. 2011)',
    seen: 'read',
  },
  'neck-range': {
    title:
      'Ranges of motion of the neck, healthy young adults: 50° down, 80° up, 80° of rotation to each side',
    where: 'learnmuscles.com/glossary/cervical-spine-ranges-of-motion-rom',
    seen: 'read',
  },
  'line-of-action': {
    title:
      'Film glossary, 180 degree rule: cameras on one side of the axis of action, so that two who talk look in opposite directions',
    where: 'ukfilmnet.org/learning/mod/glossary/showentry.php?eid=265',
    seen: 'read',
  },
  'line-of-eyes': {
    title:
      'Crossing the line, conversation: a straight line between the two; close-ups from the side of the wide shot cut together',
    where: 'bbc.co.uk/academy/production/article/art20130702112135404',
    seen: 'read',
  },
  'crossing-in-shot': {
    title:
      'Slides on editing, the 180 degree rule: a shot on the line is neutral; a camera or a performer that is seen to cross takes the viewer along',
    where: 'gitea.alluna.pt/jfig/workshop-video-editing-basics, docs/slides/30-180-degree.md',
    seen: 'read',
  },
  'screen-direction': {
    title:
      'Basic photography course, motion pictures: constant screen direction, the action axis, and what explains a change',
    where: 'dofmaster.com/courses/basic/photographycourse-343.html, tpub.com/photography1/ph209262.htm',
    seen: 'read',
  },
  'neutral-shot': {
    title:
      'Army correspondence course SS0535: a head-on or tail-away shot is neutral in direction and covers a change',
    where: 'armycommunications.tpub.com/SS0535/SS05350034.htm',
    seen: 'read',
  },
  'thirty-degree-rule': {
    title:
      'Encyclopedia, 30-degree rule: at least 30 degrees relative to the subject between successive shots of it, on one side; the axial cut',
    where: 'en.wikipedia.org/wiki/30-degree_rule',
    seen: 'read',
  },
  'eyeline-compass': {
    title:
      'Practical cinematography, eye-lines and the camera (slides): from a look narrow to the lens to the full back',
    where: 'slideshare.net/slideshow/eyeline0/12254326',
    seen: 'read',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
