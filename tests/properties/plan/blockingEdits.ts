import { addBeat } from '../../../src/core/plan/edits/addBeat';
import { addLine } from '../../../src/core/plan/edits/addLine';
import { addMarkAt } from '../../../src/core/plan/edits/addMarkAt';
import { addPass } from '../../../src/core/plan/edits/addPass';
import { addWayPoint } from '../../../src/core/plan/edits/addWayPoint';
import { changeBeat } from '../../../src/core/plan/edits/changeBeat';
import { addCue, removeCue, setCue } from '../../../src/core/plan/edits/changeCues';
import { changeLine } from '../../../src/core/plan/edits/changeLine';
import { changePass } from '../../../src/core/plan/edits/changePass';
import { circleAround } from '../../../src/core/plan/edits/moves/circleAround';
import { comeFrom } from '../../../src/core/plan/edits/moves/comeFrom';
import { stopFaceToFace } from '../../../src/core/plan/edits/moves/stopFaceToFace';
import { moveWayPoint } from '../../../src/core/plan/edits/moveWayPoint';
import { removeBeat } from '../../../src/core/plan/edits/removeBeat';
import { removeCheat } from '../../../src/core/plan/edits/removeCheat';
import { removeLine } from '../../../src/core/plan/edits/removeLine';
import { removePass } from '../../../src/core/plan/edits/removePass';
import { removeWayPoint } from '../../../src/core/plan/edits/removeWayPoint';
import { setCheat } from '../../../src/core/plan/edits/setCheat';
import { setWay } from '../../../src/core/plan/edits/setWay';
import { setWayLine } from '../../../src/core/plan/edits/setWayLine';
import type { Looks, Towards } from '../../../src/core/plan/schema/cast';
import type { Cue } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Hat } from './hat';

/** Whom or what a mark turns to, now and then nobody that there is. */
export const someTowards = (hat: Hat): Towards =>
  hat.draw.chance(0.6) ? { who: hat.performer() } : { point: hat.point() };

export const someLooks = (hat: Hat): Looks =>
  hat.draw.chance(0.4)
    ? { turnDegrees: hat.draw.between(-95, 95), tiltDegrees: hat.draw.between(-40, 40) }
    : someTowards(hat);

const someWayTo = (hat: Hat): { readonly performerId: string; readonly markId: string } => {
  const performerId = hat.performer();
  return { performerId, markId: hat.markOf(performerId) };
};

/** The edits of beats, marks, ways, passes, lines, cheats and the ready moves, by the names of their files. */
export const BLOCKING_EDITS: Readonly<Record<string, (hat: Hat) => (plan: Plan) => Plan>> = {
  addBeat: (hat) => {
    const args = {
      atSeconds: hat.seconds(),
      ...(hat.draw.chance(0.3) && { label: hat.draw.pick(['Cue', '']) }),
    };
    return (plan) => (plan.beats.length > 12 ? plan : addBeat(plan, args));
  },
  changeBeat: (hat) => {
    const patch = hat.draw.pick([
      { atSeconds: hat.seconds() },
      { atSeconds: hat.seconds(), label: 'Cue' },
      { label: '' },
    ]);
    const args = { beatId: hat.beat(), patch, ripple: hat.draw.chance(0.5) };
    return (plan) => changeBeat(plan, args);
  },
  removeBeat: (hat) => {
    const args = { beatId: hat.beat(), ...(hat.draw.chance(0.4) && { instead: hat.beat() }) };
    return (plan) => removeBeat(plan, args);
  },
  changeCues: (hat) => {
    const id = hat.gear('head', 'practical', 'bulb string');
    const cue: Cue = {
      atSeconds: hat.seconds(),
      ...(hat.draw.chance(0.4) && { beat: hat.beat() }),
      dim: hat.draw.between(-0.05, 1.05),
      fadeSeconds: hat.size(),
    };
    const which = { id, cueIndex: hat.index() };
    const patch = hat.draw.pick([cue, { beat: undefined }, { dim: cue.dim }, { fadeSeconds: 0 }, {}]);
    const edit = hat.draw.pick([
      (plan: Plan) => addCue(plan, { id, cue }),
      (plan: Plan) => setCue(plan, { ...which, patch }),
      (plan: Plan) => removeCue(plan, which),
    ]);
    if (!hat.draw.chance(0.3)) return edit;
    const flickers = hat.draw.pick([true, false, undefined]);
    const { dim: _, ...without } = cue;
    return hat.draw.pick([
      (plan: Plan) => addCue(plan, { id, cue: { ...without, ...(flickers !== undefined && { flickers }) } }),
      (plan: Plan) => setCue(plan, { ...which, patch: { flickers } }),
      (plan: Plan) => setCue(plan, { ...which, patch: { dim: undefined, flickers } }),
    ]);
  },
  addMarkAt: (hat) => {
    const args = {
      performerId: hat.performer(),
      beatId: hat.beat(),
      at: hat.spot(),
      ...(hat.draw.chance(0.3) && { faces: someTowards(hat), looksOnTheWay: someLooks(hat) }),
    };
    return (plan) => addMarkAt(plan, args);
  },
  addWayPoint: (hat) => {
    const args = { ...someWayTo(hat), at: hat.spot(), ...(hat.draw.chance(0.3) && { index: hat.index() }) };
    return (plan) => addWayPoint(plan, args);
  },
  moveWayPoint: (hat) => {
    const args = { ...someWayTo(hat), index: hat.index(), to: hat.spot() };
    return (plan) => moveWayPoint(plan, args);
  },
  removeWayPoint: (hat) => {
    const args = { ...someWayTo(hat), index: hat.index() };
    return (plan) => removeWayPoint(plan, args);
  },
  setWay: (hat) => {
    const args = {
      ...someWayTo(hat),
      through: hat.spots(0, 4),
      line: hat.draw.pick(['straight', 'curved'] as const),
    };
    return (plan) => setWay(plan, args);
  },
  setWayLine: (hat) => {
    const args = { ...someWayTo(hat), line: hat.draw.pick(['straight', 'curved'] as const) };
    return (plan) => setWayLine(plan, args);
  },
  addPass: (hat) => {
    const args = { beatId: hat.beat(), from: hat.performer(), to: hat.performer() };
    return (plan) => addPass(plan, args);
  },
  changePass: (hat) => {
    const patch = hat.draw.pick([
      { beat: hat.beat() },
      { from: hat.performer() },
      { to: hat.performer() },
      {},
    ]);
    const args = { passId: hat.pass(), patch };
    return (plan) => changePass(plan, args);
  },
  removePass: (hat) => {
    const passId = hat.pass();
    return (plan) => removePass(plan, { passId });
  },
  addLine: (hat) => {
    const pair: [string, string] = [hat.performer(), hat.performer()];
    const args = { pair, ...(hat.draw.chance(0.3) && { establishedBy: hat.setup() }) };
    return (plan) => addLine(plan, args);
  },
  changeLine: (hat) => {
    const pair: [string, string] = [hat.performer(), hat.performer()];
    const patch = hat.draw.pick([{ pair }, { establishedBy: hat.setup() }, { establishedBy: undefined }, {}]);
    const args = { lineId: hat.line(), patch };
    return (plan) => changeLine(plan, args);
  },
  removeLine: (hat) => {
    const lineId = hat.line();
    return (plan) => removeLine(plan, { lineId });
  },
  setCheat: (hat) => {
    const heading = hat.draw.pick([{}, { headingDegrees: hat.degrees() }, { headingDegrees: null }]);
    const args = { setupId: hat.setup(), ...someWayTo(hat), at: hat.spot(), ...heading };
    return (plan) => setCheat(plan, args);
  },
  removeCheat: (hat) => {
    const which = hat.draw.pick([{}, { performerId: hat.performer() }, someWayTo(hat)]);
    const args = { setupId: hat.setup(), ...which };
    return (plan) => removeCheat(plan, args);
  },
  circleAround: (hat) => {
    const args = {
      performerId: hat.performer(),
      aroundId: hat.performer(),
      fromBeat: hat.beat(),
      toBeat: hat.beat(),
      turnDegrees: hat.degrees(),
      ...(hat.draw.chance(0.5) && { radiusMetres: hat.size() }),
    };
    return (plan) => circleAround(plan, args);
  },
  stopFaceToFace: (hat) => {
    const args = {
      performerId: hat.performer(),
      otherId: hat.performer(),
      beatId: hat.beat(),
      apartMetres: hat.size(),
    };
    return (plan) => stopFaceToFace(plan, args);
  },
  comeFrom: (hat) => {
    const args = {
      performerId: hat.performer(),
      beatId: hat.beat(),
      corner: hat.spot(),
      newBeat: hat.draw.chance(0.5),
    };
    return (plan) => (plan.beats.length > 12 ? plan : comeFrom(plan, args));
  },
};
