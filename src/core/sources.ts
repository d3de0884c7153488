/** Where a formula or a number comes from. A docstring or a data entry cites the key; a test ties the two. */
export interface Source {
  readonly title: string;
  readonly where: string;
  /** How it was got: read there, computed by a named package, or from memory. */
  readonly seen: 'read' | 'package' | 'memory' | 'common practice, no source';
}

/** The bibliography, by the keys that docstrings and data cite. */
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
  'exposure-values': {
    title: 'Exposure value, table 3: EV for ISO 100 against lux (C = 250), footcandles and cd/m² (K = 12.5)',
    where: 'e-com-net.com/article/1275207877182636032.htm (copy of an encyclopedia)',
    seen: 'read',
  },
  'meter-constants': {
    title: 'Exposure meter calibration: ISO 2720 lets K be 10.6 to 13.4, 12.5 is in common use',
    where: 'basiccamera.blogspot.com/2008/06/exposure-meter-calibration.html',
    seen: 'read',
  },
  'gnu-units': {
    title: 'GNU units 2.22: the footcandle as lumens on a square foot',
    where: 'Debian units 2.22-2',
    seen: 'package',
  },
  'inverse-square': {
    title:
      'Illuminance of a source from its intensity, E = I cos β ÷ d², and of a uniform diffuser, L = E ρ ÷ π',
    where: 'any textbook of photometry; not looked up',
    seen: 'memory',
  },
  'neutral-density': {
    title: 'Neutral density (table of an encyclopedia): densities 0.3, 0.6, 0.9, 1.2 take 1, 2, 3, 4 stops',
    where: 'opticalglasscn.com/ND.php',
    seen: 'read',
  },
  'flicker-safe-rates': {
    title: 'Frame rates that are safe under 60 Hz lamps with any shutter: 120 divided by a whole number',
    where: 'cinematography.com, topic 13437, second post',
    seen: 'read',
  },
  'flicker-safe-angles': {
    title:
      'Shutter angles that are safe under mains lamps, with their derivation: 25 frames under 60 Hz at 75°, 150°, 225°, 300°',
    where: 'tumgag.com/tag/setlights',
    seen: 'read',
  },
  'mains-frequencies': {
    title: 'Which countries have mains of 50 Hz and which of 60 Hz',
    where: 'travellers’ tables; not looked up',
    seen: 'memory',
  },
  'just-noticeable': {
    title: 'Brightness that the eye tells apart: a ratio of about 1.05 to 1 above 0.1 cd/m²',
    where: 'pc.ibm.com/ww/healthycomputing/vdt13con.html',
    seen: 'read',
  },
  'zone-system': {
    title:
      'Zones after Adams: III, two stops under grey, has texture; II, three under, a first suggestion of it; I, four under, tone without texture',
    where: 'claireharmanphotography.blogspot.com, May 2010; awh-imaging.co.uk/barrythornton/zone1.htm',
    seen: 'read',
  },
  'water-reflectance': {
    title:
      'N. G. Jerlov: Optical Oceanography, 1968, table XVI: what level water turns back by the angle of incidence, unpolarised and by polarisation',
    where: 'toc.123doc.org/document/2731813-chapter-5 (copy)',
    seen: 'read',
  },
  'pavement-reflectance': {
    title: 'Reflectance of dry pavements, table 3: asphalt 0.082 and 0.074, concrete 0.294',
    where: 'Advances in Materials Science and Engineering 2012, 523051',
    seen: 'read',
  },
  microfacets: {
    title:
      'Reflection from a surface of small mirrors whose slopes spread normally: K. E. Torrance, E. M. Sparrow, 1967; P. Beckmann; masking as in B. Walter et al., 2007',
    where: 'not looked up; energy and limits are checked by the tests that cite it',
    seen: 'memory',
  },
  'glitter-path': {
    title:
      'M. Minnaert: The nature of light and colour in the open air: on ruffled water the image of a light is a streak, longer than wide by one over the sine of its height',
    where: 'not looked up',
    seen: 'memory',
  },
  'polygon-light': {
    title:
      'J. H. Lambert: Photometria, 1760: the light of an even diffuse polygon at a point, by the angles that its edges take up there',
    where: 'textbooks of radiation; not looked up',
    seen: 'memory',
  },
  'form-factors': {
    title:
      'Handbooks of radiation: configuration factor from a small element to a rectangle, parallel to it and square to it, a corner above the element',
    where: 'not looked up; checked by sums in the test that cites it',
    seen: 'memory',
  },
  'axial-candela': {
    title:
      'A photometric test of an axial lamp as an LM-63-2002 file: candela every 2.5°, 532 lm, beam 87.1°, field 137.9°',
    where: 'github.com/echowuzangye/CU-calculations-based-on-IES-file, ies/7.IES',
    seen: 'read',
  },
  'lm-63': {
    title:
      'IES LM-63-1986 to 2019, standard file format for photometric data: order of the numbers, types A, B and C, symmetries, factors',
    where: 'order of the numbers as in I. Ashdown: Parsing the IESNA LM-63 Photometric Data File, 1998',
    seen: 'memory',
  },
  'beam-angle': {
    title:
      'Beam angle between half the largest intensity, field angle between a tenth (IES definition, quoted)',
    where: 'tickerdossier.com/wiki/beam-angle',
    seen: 'read',
  },
  png: {
    title:
      'Portable Network Graphics specification: chunks, their CRC (polynomial EDB88320, reflected), tEXt and iTXt',
    where: 'w3.org/TR/png; not looked up',
    seen: 'memory',
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
  guardrail: {
    title:
      'US workplace rule 29 CFR 1926.502(b)(1): the top of a guardrail is 42 inches, give or take 3, above the floor',
    where: 'quoted in copies of the rule; local codes differ',
    seen: 'read',
  },
  'unprotected-edge': {
    title:
      'US workplace rules 29 CFR 1926.501(b)(1) and 1926.502(f)(1): an edge 6 feet or more above a lower level is guarded; a warning line stands 6 feet or more from it',
    where: 'field.berggroup.app, traffixdevices.com/osha-1926-502f',
    seen: 'read',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
