import { DECIDES } from '../../../core/cautions/caution';
import { CAUTION_STANDINGS, type Caution, type CautionStanding } from '../../../core/cautions/types';
import { SOURCES, type SourceKey } from '../../../core/sources';
import type { Setting } from '../marks';
import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';

const HEADINGS: Readonly<Record<CautionStanding, string>> = {
  breaks: 'Breaks a figure',
  said: 'To be minded',
  holds: 'Holds, with the figure to keep to',
};

const FINE: Setting = { size: 7.5, grey: 0.3 };
/** Of two or three lines and their source, which stay on one page, points. */
const CAUTION_HEIGHT = 48;

/** Where figures come from, by numbers of the list at the end. */
const sourceWords = ({ sources }: Caution, listed: readonly SourceKey[]): string =>
  sources.length === 0
    ? 'Common practice.'
    : `${sources.length === 1 ? 'Source' : 'Sources'} ${sources.map((key) => listed.indexOf(key) + 1).join(', ')}.`;

/** What can hurt somebody on the roof, with where its figures come from and who decides. */
export function cautionsPart(writer: PartWriter, { report: { cautions } }: PartInput, part: string): void {
  writer.newPage(part);
  writer.heading(part);
  writer.text(DECIDES, { weight: 'strong' });
  // As they are told below, so that sources are numbered as they come.
  const told = CAUTION_STANDINGS.flatMap((standing) =>
    cautions.filter((caution) => caution.standing === standing),
  );
  if (told.length === 0)
    writer.text('The plan gives no figure to warn of. That is not to say that the roof is safe.');
  const listed = [...new Set(told.flatMap(({ sources }) => sources))];
  for (const standing of CAUTION_STANDINGS) {
    const own = told.filter((caution) => caution.standing === standing);
    if (own.length === 0) continue;
    writer.subheading(HEADINGS[standing], 'text');
    for (const caution of own) {
      writer.gap(4);
      writer.keep(CAUTION_HEIGHT);
      writer.text(caution.sentence, { weight: standing === 'breaks' ? 'strong' : 'regular' });
      if (caution.note !== undefined) writer.text(`Noted: ${caution.note}`, {}, 10);
      if (caution.decides !== DECIDES) writer.text(caution.decides, FINE, 10);
      writer.text(sourceWords(caution, listed), FINE, 10);
    }
  }
  if (listed.length > 0) writer.subheading('Sources', 'text');
  for (const [place, key] of listed.entries()) {
    const { title, where } = SOURCES[key];
    writer.text(`${place + 1}. ${title} (${where})`, FINE);
  }
}
