/** Where what is about the order of a night comes from, and the paper that it is handed out on; part of the bibliography. */
export const SOURCES_OF_NIGHT = {
  'held-karp': {
    title:
      'M. Held and R. M. Karp, A dynamic programming approach to sequencing problems (1962): the best way through a set of places that ends at one of them, from the best ways through the set without it',
    where: 'the paper; not looked up',
    seen: 'memory',
  },
  icalendar: {
    title:
      'RFC 5545, internet calendaring: lines of 75 octets that end in CR LF and fold before a space (3.1), escaped text (3.3.11), times in universal time (3.3.5), events (3.6.1)',
    where: 'the standard; not looked up',
    seen: 'memory',
  },
  'paper-sizes': {
    title: 'ISO 216: A4 is 210 mm by 297 mm; ANSI Y14.1 and common practice: letter is 8.5 in by 11 in',
    where: 'the standards; not looked up',
    seen: 'memory',
  },
  bidi: {
    title: 'Unicode Standard Annex 9, bidirectional algorithm: levels, and rule L2 for the order in sight',
    where: 'unicode.org/reports/tr9; not looked up',
    seen: 'memory',
  },
  truetype: {
    title: 'ISO 14496-22, open font format: the tables glyf, head, hhea, hmtx, loca and maxp',
    where: 'the standard; not looked up',
    seen: 'memory',
  },
  pdf: {
    title:
      'ISO 32000, portable document format: a unit of user space is 1/72 in unless a page says otherwise',
    where: 'the standard; not looked up',
    seen: 'memory',
  },
} as const;
