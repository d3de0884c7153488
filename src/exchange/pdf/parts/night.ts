import { wallTime } from '../../../core/night/times/nightClock';
import type { Night } from '../../../core/night/types';
import { changeWords } from '../../../core/night/words/changeWords';
import { skyEvents } from '../../../core/night/words/skyEvents';
import { setupLetter } from '../../../core/plan/setupLetter';
import { duration } from '../../../core/units/durations';
import { corners } from '../boxes';
import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';
import type { Writer } from '../writer';

const LINE_HEIGHT = 26;
const HOUR = 60;

/** The night as a line: a bar for each setup from when its work begins to when it ends, dark where it is shot, over hours by the clock, with what the sky does above. */
export function timeLine(writer: Writer, night: Night): void {
  const { clock, call, schedule, sky } = night;
  const [left, , right] = writer.room;
  const from = Math.floor(call / HOUR) * HOUR;
  const until = Math.max(from + HOUR, Math.ceil(schedule.wrap / HOUR) * HOUR);
  const x = (minutes: number): number => left + ((right - left) * (minutes - from)) / (until - from);
  const events = skyEvents(sky).filter(({ minutes }) => minutes >= from && minutes <= until);
  writer.need(events.length * 10 + LINE_HEIGHT + 40);
  writer.gap(6);
  const top = writer.y + events.length * 10 + 4;
  const bottom = top + LINE_HEIGHT;
  events.forEach(({ name, minutes }, row) => {
    const y = writer.y + row * 10;
    const isRight = x(minutes) > (left + right) / 2;
    writer.shape(
      [
        [x(minutes), y + 2],
        [x(minutes), bottom],
      ],
      { line: 0.6, width: 0.4 },
    );
    writer.line(`${name} ${wallTime(clock, minutes)}`, [x(minutes) + (isRight ? -3 : 3), y], {
      size: 7,
      grey: 0.3,
      align: isRight ? 'right' : 'left',
    });
  });
  const bar = (start: number, end: number, fill: number): void =>
    writer.shape(corners([x(start), top, x(end), bottom]), { fill, line: 0, width: 0.4 });
  for (const placed of schedule.setups) {
    bar(placed.from, placed.shotFrom, 0.93);
    bar(placed.shotFrom, placed.until, 0.55);
    writer.line(setupLetter(placed.job), [(x(placed.from) + x(placed.until)) / 2, top + 8], {
      size: 9,
      weight: 'strong',
      align: 'middle',
    });
  }
  if (schedule.meal && schedule.meal.until > schedule.meal.from) {
    const { from: start, until: end } = schedule.meal;
    bar(start, end, 1);
    writer.line('meal', [(x(start) + x(end)) / 2, top + 9], { size: 7, align: 'middle' });
  }
  writer.shape(
    [
      [left, bottom],
      [right, bottom],
    ],
    { line: 0, width: 0.6 },
  );
  for (let hour = from; hour <= until; hour += HOUR) {
    writer.shape(
      [
        [x(hour), bottom],
        [x(hour), bottom + 4],
      ],
      { line: 0, width: 0.6 },
    );
    const align = hour === from ? 'left' : hour === until ? 'right' : 'middle';
    writer.line(wallTime(clock, hour), [x(hour), bottom + 5], { size: 7, align });
  }
  writer.y = bottom + 20;
  writer.text('Light bars: rigging, lighting, rehearsing. Dark bars: shooting.', {
    size: 7.5,
    grey: 0.3,
  });
}

/** The order of the night: a line of times where one can be drawn, a table, what is asked and does not hold. */
export function nightPart(
  writer: PartWriter,
  { plan, night }: PartInput,
  part: string,
  drawLine: (night: Night) => void = () => {},
): void {
  const { clock, call, schedule } = night;
  const at = (minutes: number): string => wallTime(clock, minutes);
  writer.newPage(part);
  writer.heading(part);
  const meal = schedule.meal
    ? `, meal ${at(schedule.meal.from)} for ${duration(schedule.meal.until - schedule.meal.from)}`
    : '';
  writer.text(`Call ${at(call)}${meal}, wrap ${at(schedule.wrap)}.`);
  const sky = skyEvents(night.sky).map(({ name, minutes }) => `${name} ${at(minutes)}`);
  if (sky.length > 0) writer.text(`${sky.join(', ')}.`);
  for (const { standing, sentence } of night.notes) {
    writer.gap(2);
    writer.text(sentence, { weight: standing === 'breaks' ? 'strong' : 'regular' });
  }
  if (schedule.setups.length === 0) return;
  drawLine(night);
  writer.gap(6);
  writer.table(
    [
      { name: 'setup', share: 32 },
      { name: 'from', share: 9 },
      { name: 'shot', share: 18 },
      { name: 'what changes before it', share: 41 },
    ],
    schedule.setups.map(({ job, from, shotFrom, until, changes }) => [
      `${setupLetter(job)}, ${plan.setups[job].label}`,
      at(from),
      `${at(shotFrom)} to ${at(until)}`,
      changes ? changeWords(changes) : '',
    ]),
  );
}
