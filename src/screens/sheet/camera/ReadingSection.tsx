import { useEffect, useRef } from 'react';
import { cameraReading } from '../../../core/continuity/cameraReading';
import {
  CAMERA_LINES,
  cameraWords,
  PERFORMER_COLUMNS,
  performerWords,
} from '../../../core/continuity/readingWords';
import { spanOf } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import { useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';

/** What an assistant reads off the camera, with the clock: past React, sixty times a second. */
export function ReadingSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const lengths = useSession((state) => state.lengths);
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    const [from, to] = spanOf(plan, setup);
    const cells = new Map<string, HTMLElement>();
    for (const cell of section.current?.querySelectorAll<HTMLElement>('[data-read]') ?? [])
      cells.set(cell.dataset.read ?? '', cell);
    const write = (key: string, text: string): void => {
      const cell = cells.get(key);
      if (cell && cell.textContent !== text) cell.textContent = text;
    };
    const show = (seconds: number): void => {
      const reading = cameraReading(plan, setup, Math.min(to, Math.max(from, seconds)));
      for (const [line, text] of Object.entries(cameraWords(reading, lengths))) write(line, text);
      for (const { id } of plan.cast) {
        const performer = reading.performers.find(({ performerId }) => performerId === id) ?? null;
        for (const [column, text] of Object.entries(performerWords(performer, lengths)))
          write(`${id} ${column}`, text);
      }
    };
    show(liveStore.getState().seconds);
    return liveStore.subscribe((now, before) => {
      if (now.seconds !== before.seconds) show(now.seconds);
    });
  }, [plan, setup, lengths]);
  return (
    <section className="group reading-off" ref={section} aria-label="Reading of the camera">
      <h4>Reading</h4>
      <dl>
        {CAMERA_LINES.map((line) => (
          <div key={line}>
            <dt>{line}</dt>
            <dd data-read={line} />
          </div>
        ))}
      </dl>
      {plan.cast.length === 0 ? null : (
        <table>
          <thead>
            <tr>
              <th scope="col">to the eyes of</th>
              {PERFORMER_COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {withNames(plan).cast.map(({ id, label }) => (
              <tr key={id}>
                <th scope="row">{label}</th>
                {PERFORMER_COLUMNS.map((column) => (
                  <td key={column} data-read={`${id} ${column}`} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
