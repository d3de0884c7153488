/** The part of the bibliography that is about light: see `sources`. */
export const SOURCES_OF_LIGHT = {
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
  'grip-nets': {
    title: 'Nets in a grip’s kit: a single takes half a stop, a double one stop',
    where: 'lenses-and-lights.blogspot.com/2008/03/shaping-light-with-flags-silks-and.html',
    seen: 'read',
  },
  'road-lighting-classes': {
    title:
      'Classes of road lighting: mean of M1 to M6, for traffic: 2, 1.5, 1, 0.75, 0.5, 0.3 cd/m²; of P1 to P6, for walking: 15, 10, 7.5, 5, 3, 2 lx',
    where: 'European standard EN 13201-2:2015, in a copy of its tables',
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
  'downlight-candela': {
    title: 'A lamp as an LM-63-1995 file: candela every 2.5°, 1218 lm, 14 W',
    where: 'github.com/polygonjs/polygonjs (MIT licence), src/core/lights/spotlight/ies/lm_63_1995.ts',
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
  planck: {
    title: 'M. Planck: radiance of a full radiator by wavelength, with c₂ = h c ÷ k = 14,387.77 µm K',
    where: 'textbooks of radiation; not looked up',
    seen: 'memory',
  },
  'photopic-curve': {
    title:
      'Luminous efficacy tables: what the light-adapted eye makes of each wavelength, every 10 nm, 1 at 555 nm',
    where: 'hsc.edu.kw, physics pages, hbase/vision/efficacy.html (copy)',
    seen: 'read',
  },
  'conversion-filters': {
    title:
      'Conversion filters (slides): 3200 K to 5500 K takes 2 stops, 3400 K to 5500 K 1⅔, 3800 K to 5500 K 1; 5500 K to 3800 K takes ⅓, to 3400 K ⅔, to 3200 K ⅔',
    where: 'powershow.com, view1/1f201b, slide 4',
    seen: 'read',
  },
  'legendre-sums': {
    title:
      'Sums of Legendre polynomials: a curve round an axis that is spread evenly on the sphere has each of its terms multiplied by that of the spread',
    where: 'textbooks of spherical harmonics; not looked up, checked by the test that cites it',
    seen: 'memory',
  },
  'purkinje-image': {
    title:
      'Geometrical and visual optics (text copy): the front of the cornea is a convex mirror of 7.80 mm, the image of what is far away 3.90 mm behind it',
    where: 'what-when-how.com/Tutorial/topic-526il94g0/Geometrical-and-Visual-Optics-249.html',
    seen: 'read',
  },
  'moonlight-model': {
    title:
      'Krisciunas and Schaefer (1991), A model of the brightness of moonlight: light by phase, 0.172 magnitudes an air mass, what the sky scatters',
    where:
      'Publications of the Astronomical Society of the Pacific 103, 1033; code after it in public repositories',
    seen: 'read',
  },
  'twilight-light': {
    title:
      'Lux of twilight by the altitude of the sun, as cubics of its logarithm (almanac circular 171); checked against its printed limits, 3.4, 0.008 and 0.0006 lx at −6, −12 and −18 degrees',
    where: 'not looked up',
    seen: 'memory',
  },
  'cloud-amplifies': {
    title:
      'Cloud coverage acts as an amplifier for ecological light pollution: 10.1 times inside a large town',
    where: 'Kyba and others (2011), doi.org/10.1371/journal.pone.0017307',
    seen: 'read',
  },
  'sky-units': {
    title: 'Magnitudes to the square second of arc as luminance, 10.8 × 10⁴ × 10^(−0.4 m) cd/m²',
    where: 'unihedron.com/projects/darksky/magconv.php',
    seen: 'read',
  },
  'country-sky': {
    title: 'Clear nights overhead at a country lake: 21.5 to 21.7 magnitudes to the square second of arc',
    where: 'Jechow and others (2016), arXiv 1602.04537',
    seen: 'read',
  },
} as const;
