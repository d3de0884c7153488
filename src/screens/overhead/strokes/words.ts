import type { Plan } from '../../../core/plan/schema/plan';
import { formatHeading } from '../../../core/units/angles';
import { formatArea, formatLength, type LengthSystem } from '../../../core/units/lengths';
import { gridStep } from '../../../desk/tools/catching';
import type { StrokeFigures } from '../../../desk/tools/figures';
import { entryOf } from '../../../desk/tools/making';
import { openedRun } from '../../../desk/tools/openings';
import type { Stroke, Tool } from '../../../desk/tools/toolStore';
import { nearestEdge } from '../geometry/roof';
import { nameInText } from '../words';

const IN_LINE = 'in line with ';

/** Why the hand is where it is, in line with two things said at once; that it is on the grid goes without saying. */
function reasonWords({ why }: Stroke): string[] {
  const words = why.filter(({ kind }) => kind !== 'grid').map(({ word }) => word);
  const [first, second] = words;
  return first?.startsWith(IN_LINE) && second?.startsWith(IN_LINE)
    ? [first === second ? first : `${first} and ${second.slice(IN_LINE.length)}`]
    : words;
}

/** How far the hand is from the parapet or the deck's edge. */
function edgeWords(plan: Plan, next: readonly [number, number], lengths: LengthSystem): string[] {
  const edge = nearestEdge(plan, next);
  return edge ? [`${formatLength(edge.metres, lengths)} from ${edge.of}`] : [];
}

/** The lines beside the hand: why it is there and its bearing, then what all of it comes to. */
export function handLines(
  plan: Plan,
  stroke: Stroke,
  figures: StrokeFigures,
  lengths: LengthSystem,
): readonly string[] {
  const { next, corners } = stroke;
  if (!next) return [];
  const bearing = figures.bearingDegrees === null ? [] : [formatHeading(figures.bearingDegrees, 0)];
  const first = [...reasonWords(stroke), ...bearing];
  if (corners.length === 0) first.push(...edgeWords(plan, next, lengths));
  const all =
    corners.length > 1 && figures.totalMetres > 0
      ? [`${formatLength(figures.totalMetres, lengths)} in all`]
      : [];
  if (figures.areaSquareMetres !== null) all.push(formatArea(figures.areaSquareMetres, lengths));
  return [first.join(', '), all.join(', ')].filter((line) => line !== '');
}

/** What stands on the other side of the leg: the bays of a fence. */
export function baysWords(figures: StrokeFigures, lengths: LengthSystem): string {
  const { bays } = figures;
  if (!bays) return '';
  return `${bays.count} ${bays.count === 1 ? 'bay' : 'bays'} of ${formatLength(bays.metres, lengths)}`;
}

/** What is in the hand, in a word or two within a sentence. */
export function toolName(plan: Plan, tool: Tool): string {
  if (tool.type === 'tape') return 'tape';
  if (tool.type === 'two points') return 'two points';
  if (tool.type === 'place') return tool.wanted.word;
  if (tool.type === 'opening') {
    const run = openedRun(plan, tool.itemId);
    return run ? `opening in ${nameInText(run.label)}` : 'opening';
  }
  return nameInText(entryOf(tool)?.word ?? '');
}

/** What is read out when a tool is picked. */
export function pickedSentence(plan: Plan, tool: Tool, lengths: LengthSystem): string {
  if (tool.type === 'hand') return '';
  const step = gridStep();
  const by = step === null ? 'step by step' : `by ${formatLength(step, lengths)}`;
  const ends = entryOf(tool)?.how;
  const then = ends === 'run' || ends === 'outline' ? ', E ends it' : '';
  const name = toolName(plan, tool);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} in the hand. Arrows point ${by}, Enter presses${then}, Escape drops it.`;
}

/** What is read out when the keys point somewhere. */
export function spokenHand(
  plan: Plan,
  stroke: Stroke,
  figures: StrokeFigures,
  lengths: LengthSystem,
): string {
  const { next } = stroke;
  if (!next) return '';
  const leg = figures.legMetres === null ? [] : [`${formatLength(figures.legMetres, lengths)} long`];
  const bearing =
    figures.bearingDegrees === null ? [] : [`bearing ${formatHeading(figures.bearingDegrees, 0)}`];
  const corner = stroke.corners.length > 0 ? [`corner ${stroke.corners.length + 1}`] : [];
  const said = [...corner, ...leg, ...bearing, ...edgeWords(plan, next, lengths), ...reasonWords(stroke)];
  // On bare paper there is nothing to be told from: where the crosshair is on the sheet has to do.
  return said.length > 0 ? said.join(', ') : onSheetWords(next, lengths);
}

/** Where a place lies from the middle of the sheet. */
function onSheetWords([x, z]: readonly [number, number], lengths: LengthSystem): string {
  const across = `${formatLength(Math.abs(x), lengths)} to the ${x < 0 ? 'left' : 'right'}`;
  const along = `${formatLength(Math.abs(z), lengths)} ${z < 0 ? 'up' : 'down'} the sheet`;
  return `${across} and ${along} from its middle`;
}
