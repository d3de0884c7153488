import { DEPARTMENTS, type Department, type PackingLine } from '../../../core/night/packing/types';
import type { Department as Asked } from '../../../desk/crew/crewStore';

/** A packing line with the id that its tick is kept by. */
export interface TickedLine {
  readonly id: string;
  readonly line: PackingLine;
}

/** Whether a packing line is for whoever asks. What keeps people safe is everybody's; the floor is laid by the grips. */
export const isFor = (asked: Asked, department: Department): boolean =>
  asked === 'all' ||
  department === 'safety' ||
  asked === department ||
  (asked === 'grip' && department === 'floor');

/** Lines with ids that a later link of the same night has too: by whose a thing is and what it is called. */
export function tickedLines(packing: readonly PackingLine[]): readonly TickedLine[] {
  const seen = new Map<string, number>();
  return packing.map((line) => {
    const name = `pack ${line.department} ${line.label}`;
    const times = seen.get(name) ?? 0;
    seen.set(name, times + 1);
    return { id: times === 0 ? name : `${name} ${times + 1}`, line };
  });
}

/** What a tick is taken back for when a later link has it otherwise. */
export const askedBy = ({ count, spare, unit, detail }: PackingLine): unknown => [count, spare, unit, detail];

/** The lines that somebody asks for by department, in the order of the departments, without empty ones. */
export function groupsFor(
  asked: Asked,
  lines: readonly TickedLine[],
): readonly { readonly department: Department; readonly lines: readonly TickedLine[] }[] {
  return DEPARTMENTS.filter((department) => isFor(asked, department))
    .map((department) => ({
      department,
      lines: lines.filter(({ line }) => line.department === department),
    }))
    .filter((group) => group.lines.length > 0);
}
