import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';

/** What a person should know of the plan before trusting its findings; no page where there is nothing. */
export function notesPart(writer: PartWriter, { report }: PartInput, part: string): boolean {
  if (report.notices.length === 0) return false;
  writer.newPage(part);
  writer.heading(part);
  for (const { where, sentence } of report.notices) {
    writer.gap(2);
    writer.text(`${where}: ${sentence}`);
  }
  return true;
}
