/** One thing of a calendar: a stretch of time, or a moment where it has no end. Instants as `2026-11-28T01:05:00Z`. */
export interface CalendarEvent {
  /** The same for the same thing whenever the calendar is written anew, and nobody else's. */
  readonly uid: string;
  readonly from: string;
  readonly until: string | null;
  readonly summary: string;
  readonly description: string;
}

/** A calendar of one name and place. */
export interface Calendar {
  readonly name: string;
  readonly location: string;
  /** Where it is, degrees; null for nowhere in particular. */
  readonly geo: { readonly latitudeDegrees: number; readonly longitudeDegrees: number } | null;
  /** When it is taken to be made. */
  readonly stamp: string;
  readonly events: readonly CalendarEvent[];
}

/** Octets of a line, the end of it not counted. Source: [icalendar] */
const LINE_OCTETS = 75;

/** Text with what would end a value or a line escaped; other control characters are left out. Source: [icalendar] */
const escapedText = (text: string): string =>
  text
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\n/g, '\\n')
    .replace(/\p{Cc}/gu, '');

/** A line folded into several, each of at most 75 octets, no character cut in two. Source: [icalendar] */
function folded(line: string): string {
  const octets = (text: string): number => new TextEncoder().encode(text).length;
  const parts: string[] = [];
  let [part, length] = ['', 0];
  for (const character of line) {
    const more = octets(character);
    if (length + more > LINE_OCTETS) {
      parts.push(part);
      // The space that a folded line begins with is one of its octets.
      [part, length] = [' ', 1];
    }
    part += character;
    length += more;
  }
  return [...parts, part].join('\r\n');
}

const dateTime = (instant: string): string => instant.replace(/[-:]/g, '');

/**
 * A calendar as a file that calendar programs take in (iCalendar), times in universal time, lines as long as they may be.
 * The same calendar gives the same bytes.
 *
 * Source: [icalendar]
 */
export function icalendarOf({ name, location, geo, stamp, events }: Calendar): string {
  const place = [
    ...(location === '' ? [] : [`LOCATION:${escapedText(location)}`]),
    ...(geo ? [`GEO:${geo.latitudeDegrees.toFixed(6)};${geo.longitudeDegrees.toFixed(6)}`] : []),
  ];
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Standclear//Night//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escapedText(name)}`,
    ...events.flatMap(({ uid, from, until, summary, description }) => [
      'BEGIN:VEVENT',
      `UID:${escapedText(uid)}`,
      `DTSTAMP:${dateTime(stamp)}`,
      `DTSTART:${dateTime(from)}`,
      ...(until === null ? [] : [`DTEND:${dateTime(until)}`]),
      `SUMMARY:${escapedText(summary)}`,
      ...(description === '' ? [] : [`DESCRIPTION:${escapedText(description)}`]),
      ...place,
      // A moment does not keep anybody busy.
      ...(until === null ? ['TRANSP:TRANSPARENT'] : []),
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}
