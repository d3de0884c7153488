import { expose } from 'comlink';
import { holdModel } from '../../core/form/models/modelShelf';
import { nightOf } from '../../core/night/nightOf';
import { packingOf } from '../../core/night/packing/packingOf';
import type { Plan } from '../../core/plan/schema/plan';
import { nightCalendar } from '../../exchange/calendar/nightCalendar';
import { planToFdl } from '../../exchange/fdl/fdl';
import { planToGlb } from '../../exchange/glb';
import { nightCsv } from '../../exchange/night/nightCsv';
import { planToUsdz } from '../../exchange/usd/usdz';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import type { OpenFilesApi, WorkedFile } from './openFilesApi';

let held: Plan | null = null;

const WRITERS: Readonly<
  Record<WorkedFile, (plan: Plan, seconds: number) => Uint8Array | string | Promise<string>>
> = {
  glb: planToGlb,
  usdz: planToUsdz,
  fdl: planToFdl,
  ics: (plan) => nightCalendar(plan, nightOf(plan)),
  csv: (plan) => {
    const night = nightOf(plan);
    return nightCsv(plan, night, packingOf(plan, night));
  },
};

const api: OpenFilesApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  write: async (what, seconds) => {
    if (!held) throw new Error('open files worker: asked before it held a plan');
    const written = await WRITERS[what](held, seconds);
    return typeof written === 'string' ? new TextEncoder().encode(written) : written.slice();
  },
};

expose(api);
