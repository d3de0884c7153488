import { parseDegrees } from '../../core/units/angles';
import { parseLength } from '../../core/units/lengths';
import { failure, type Result, success } from '../../core/units/result';
import { sessionStore } from '../sessionStore';
import { dropStroke, press, typeBearing, typeLength } from './drawing';
import { LONGEST_LEG_METRES } from './refusals';
import { type Entry, toolStore } from './toolStore';
import { answerDistance } from './twoPoints';

type Read = Result<number, { readonly sentence: string }>;

const refuse = (sentence: string): Read => failure([{ sentence }]);

/** Reads a length that a leg can have, metres. */
export function readLegLength(text: string): Read {
  const read = parseLength(text, sessionStore.getState().lengths);
  if (!read.ok) return read;
  if (read.value <= 0) return refuse('A leg takes a length of more than nothing, such as 4.8 m.');
  return read.value > LONGEST_LEG_METRES ? refuse('A leg is at most 500 m long.') : success(read.value);
}

/** Reads a bearing, degrees from 0 up to 360. */
export function readBearing(text: string): Read {
  const read = parseDegrees(text);
  if (!read.ok) return read;
  if (Math.abs(read.value) > 360) return refuse('A bearing takes 0 to 360 degrees, such as 90.');
  return success(((read.value % 360) + 360) % 360);
}

const readEntry = ({ field, text }: Entry): Read =>
  field === 'bearing' ? readBearing(text) : readLegLength(text);

function typeInto(field: Entry['field'], value: number | null): void {
  if (field === 'length') typeLength(value);
  else if (field === 'bearing') typeBearing(value);
}

/** What is typed about: the leg of what is drawn, the width of an opening, the heading of what is put. */
function firstField(): Entry['field'] | null {
  const { tool, stroke } = toolStore.getState();
  if (tool.type === 'put') return 'bearing';
  if (tool.type === 'opening') return 'length';
  return stroke && stroke.corners.length > 0 ? 'length' : null;
}

/** Begins to type on the drawing; before the first corner there is nothing to type about. */
export function beginEntry(text: string): void {
  if (toolStore.getState().tool.type === 'place') return;
  const field = firstField();
  if (!field) {
    toolStore.setState({ refusal: 'Press the first corner, then type a length.' });
    return;
  }
  toolStore.setState({ entry: { field, text: '', fault: null }, refusal: null });
  changeEntry(text);
}

/** Takes what is typed so far: what can be read is drawn at once, what cannot leaves the drawing as it was. */
export function changeEntry(text: string): void {
  const { entry } = toolStore.getState();
  if (!entry) return;
  const changed: Entry = { ...entry, text, fault: null };
  toolStore.setState({ entry: changed });
  const read = readEntry(changed);
  if (read.ok) typeInto(entry.field, read.value);
}

/** Whether what is typed can be taken; where not, the entry says what would be. */
function takeEntry(entry: Entry): boolean {
  if (entry.text.trim() === '') {
    typeInto(entry.field, null);
    return true;
  }
  const read = readEntry(entry);
  if (read.ok) typeInto(entry.field, read.value);
  else {
    typeInto(entry.field, null);
    toolStore.setState({ entry: { ...entry, fault: read.faults[0]?.sentence ?? 'This cannot be read.' } });
  }
  return read.ok;
}

/** Tab: goes from the length to the bearing, or back. */
export function switchEntry(): void {
  const { entry, tool, stroke } = toolStore.getState();
  if (
    !entry ||
    entry.field === 'distance' ||
    !takeEntry(entry) ||
    tool.type === 'put' ||
    tool.type === 'opening'
  )
    return;
  const field = entry.field === 'length' ? 'bearing' : 'length';
  const typed = field === 'length' ? stroke?.typedLengthMetres : stroke?.typedBearingDegrees;
  const text = typed === null || typed === undefined ? '' : String(Math.round(typed * 1e6) / 1e6);
  // In feet a bare number would be read as feet.
  const unit = text !== '' && field === 'length' && sessionStore.getState().lengths !== 'm' ? ' m' : '';
  toolStore.setState({ entry: { field, text: text + unit, fault: null } });
}

/** Enter: takes the corner at exactly what is typed, or the distance that was asked for. */
export function finishEntry(): void {
  const { entry } = toolStore.getState();
  if (entry?.field === 'distance') {
    finishDistance(entry);
    return;
  }
  if (!entry || !takeEntry(entry)) return;
  toolStore.setState({ entry: null });
  press();
}

function finishDistance(entry: Entry): void {
  const read = readLegLength(entry.text);
  const fault = read.ok ? answerDistance(read.value) : (read.faults[0]?.sentence ?? null);
  if (fault !== null) toolStore.setState({ entry: { ...entry, fault } });
}

/** Gives up what is typed; with a distance that was asked for the two places too. */
export function dropEntry(): void {
  if (toolStore.getState().entry?.field === 'distance') {
    dropStroke();
    return;
  }
  toolStore.setState({ entry: null });
  typeLength(null);
  typeBearing(null);
}
