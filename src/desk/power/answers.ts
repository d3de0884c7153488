import type { Plan } from '../../core/plan/schema/plan';
import { connectAll } from '../../core/power/connect/connectAll';
import { cordOfCable } from '../../core/power/cords';
import { powerOf } from '../../core/power/powerOf';
import { connectSentences } from '../../core/report/power/connectSentences';
import { mendedSentences } from '../../core/report/power/mending';
import { reportOf } from '../../core/report/power/powerReport';
import type { ConnectAnswer, LaidCable, PowerAnswer } from './powerApi';

/** A plan's power with what mends it. */
export function powerAnswer(plan: Plan): PowerAnswer {
  const power = powerOf(plan);
  const { sentences, ...report } = reportOf(plan, power);
  return { report, sentences: mendedSentences(plan, sentences, power) };
}

/** What connecting everything would lay, as cables that `layCables` lays again. */
export function connectionOf(plan: Plan): ConnectAnswer {
  const connected = connectAll(plan);
  const laid = new Set(connected.cableIds);
  const cables = connected.plan.gear.flatMap((gear): LaidCable[] => {
    if (gear.kind !== 'cable' || !laid.has(gear.id)) return [];
    const { label, path, baseMetres, diameterMetres, plugs, wire, circuit } = gear;
    const { from, to } = plugs ?? {};
    if (from === undefined || to === undefined || !wire) return [];
    const { lengthMetres } = cordOfCable(connected.plan, gear);
    return [
      {
        label,
        fromId: from,
        toId: to,
        path,
        baseMetres,
        diameterMetres,
        wire,
        circuit: circuit ?? 1,
        lengthMetres,
      },
    ];
  });
  return { cables, sentences: connectSentences(plan, connected) };
}
