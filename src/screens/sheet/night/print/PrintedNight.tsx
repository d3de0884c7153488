import { createPortal } from 'react-dom';
import { useStore } from 'zustand';
import { wallTime } from '../../../../core/night/times/nightClock';
import { changeWords } from '../../../../core/night/words/changeWords';
import { skyEvents } from '../../../../core/night/words/skyEvents';
import type { Plan } from '../../../../core/plan/schema/plan';
import { setupLetter } from '../../../../core/plan/setupLetter';
import { duration } from '../../../../core/units/durations';
import { nightStore } from '../../../../desk/night/nightStore';
import { useNight } from '../../../../desk/night/useNight';
import { allOf, amountText, byDepartment, spareText } from '../packing/packingWords';
import './print.css';

/**
 * The night on paper, its order and its packing list, with boxes to tick: seen by a printer alone, in ink on paper in
 * either theme.
 */
export function PrintedNight({ plan }: { readonly plan: Plan }) {
  const night = useNight(plan);
  const packing = useStore(nightStore, (state) => state.answer?.packing);
  if (!night || !packing) return null;
  const { clock, schedule, call, sky } = night;
  const at = (minutes: number): string => wallTime(clock, minutes);
  return createPortal(
    <div className="printed-night">
      <h1>{plan.title}</h1>
      <p>
        {plan.place.label}, {plan.place.date}. Call {at(call)}, wrap {at(schedule.wrap)}
        {schedule.meal
          ? `, meal ${at(schedule.meal.from)} for ${duration(schedule.meal.until - schedule.meal.from)}`
          : ''}
        .
      </p>
      <p>
        {skyEvents(sky)
          .map(({ name, minutes }) => `${name} ${at(minutes)}`)
          .join(', ')}
      </p>
      {schedule.setups.length > 0 ? (
        <table>
          <caption>Order of the night</caption>
          <thead>
            <tr>
              <th>setup</th>
              <th>from</th>
              <th>shot</th>
              <th>changes</th>
            </tr>
          </thead>
          <tbody>
            {schedule.setups.map(({ job, setupId, from, shotFrom, until, changes }) => (
              <tr key={setupId}>
                <td>
                  {setupLetter(job)}, {plan.setups[job].label}
                </td>
                <td>{at(from)}</td>
                <td>
                  {at(shotFrom)} to {at(until)}
                </td>
                <td>{changes ? changeWords(changes) : ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      {byDepartment(packing).map(({ department, lines }) => (
        <table key={department}>
          <caption>{department}</caption>
          <tbody>
            {lines.map((line) => (
              <tr key={`${line.label} ${line.detail}`}>
                <td className="tick" />
                <td className="amount">{amountText(allOf(line), line.unit)}</td>
                <td>
                  {line.label}
                  {line.detail === '' ? null : <small>{line.detail}</small>}
                </td>
                <td>{spareText(line)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
      <p>An estimate for planning: local codes and a competent person decide what is asked for and enough.</p>
    </div>,
    document.body,
  );
}
