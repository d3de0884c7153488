/** The part of the bibliography that is about cautions: wind, tipping, edges, ways out, loads, water, exhaust, heat. */
export const SOURCES_OF_CAUTIONS = {
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
  'plate-drag': {
    title:
      'Aeronautical Engineer’s Data Book, fig. 5.13: drag of a square plate 1.17, of an endless one 1.98, of cylinders 0.63 to 1.20 by length; F = ½ ρ v² C A. Between the plates from memory',
    where: 'p. 95, digilib.universitaspertamina.ac.id',
    seen: 'read',
  },
  'standard-air': {
    title: 'Standard atmosphere: 1.225 kg/m³ at sea level and 15 °C',
    where: 'handbooks; not looked up',
    seen: 'memory',
  },
  tipping: {
    title:
      'Impending tipping (statics, example 3): a body tips where the moment of the push about the edge of its foot is that of its weight',
    where: 'ae.msstate.edu/vlsm/friction/horizontal_surface/examples/example3.htm',
    seen: 'read',
  },
  'overturning-safety': {
    title: 'Factor of safety against overturning: holding over tipping moment, at least 1.5 in most designs',
    where: 'askfilo.com, what is the factor of safety against overturning',
    seen: 'read',
  },
  'gust-factor': {
    title:
      'Gust of 3 seconds over the mean of an hour in open country, 1.53 (figure C6-1 of the 1995 US standard on loads, quoted)',
    where: 'seaintarchive.org/mailarchive/1998b/msg00679.html',
    seen: 'read',
  },
  beaufort: {
    title: 'Beaufort scale: names, and wind in m/s and mph from 0 to 12',
    where: 'delta-s.org/weer/beaufort.html, oocities.org/tonleo_78749/assign3/scale_table.html',
    seen: 'read',
  },
  'generator-exhaust': {
    title: 'Portable generators: at least 20 feet from doors and windows, never in an enclosed space',
    where: 'esfi.org/portable-generator-safety-short',
    seen: 'read',
  },
  refuelling: {
    title: 'Portable generators: turned off and cooled down before they are refuelled',
    where: 'ceci.coop/what-do-using-portable-generator',
    seen: 'read',
  },
  'exit-width': {
    title:
      'US workplace rule 29 CFR 1910.36(g)(2): a way to an exit is at least 28 inches wide at all points',
    where: 'osha.gov/laws-regs/standardinterpretations/1978-11-27, nffs.org',
    seen: 'read',
  },
  'cords-and-water': {
    title:
      'Cords on the ground stay out of walk paths and out of water; temporary outlets have ground-fault protection (29 CFR 1926.404(b)(1)(ii))',
    where: 'nstarglobalservices.com, suu.edu/erm/eohs/electrical-safety/outdoors-and-extension-cords.html',
    seen: 'read',
  },
  'roof-load': {
    title:
      'US codes: an ordinary flat roof is reckoned for 20 lbf/ft² (0.96 kN/m²), one where people gather for 100 (4.79 kN/m²)',
    where: 'thecivilbuilders.com/2015/03/roof-live-load.html, eng-tips.com/viewthread.cfm?qid=195261',
    seen: 'read',
  },
  'ladder-angle': {
    title:
      'US workplace rule 29 CFR 1926.1053(b)(5): a leaned ladder’s foot stands out a quarter of its length',
    where: 'jjkellercompliancenetwork.com/regsense, the 4:1 ratio for ladders',
    seen: 'read',
  },
} as const;
