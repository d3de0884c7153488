import { expose } from 'comlink';
import { holdModel } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import { reportOf } from '../../core/report/report';
import { crewFileOf } from '../../exchange/html/crewFile';
import { packPdf } from '../../exchange/pdf/pack';
import { packInputSteps } from '../../exchange/pdf/packInput';
import type { PackInput } from '../../exchange/pdf/types';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { FONT_SHELF } from './fontShelf';
import type { PackApi } from './packApi';

/** The share of the work that is the report: an estimate, as all of it is slow or fast together. */
const REPORT_SHARE = 0.8;

let held: Plan | null = null;
let read: PackInput | null = null;

const api: PackApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  read: async (asked, tell) => {
    if (!held) throw new Error('pack worker: asked before it held a plan');
    const plan = held;
    const report = reportOf(withNames(plan), {
      onProgress: (done, of) => tell(of === 0 ? 0 : (REPORT_SHARE * done) / of),
    });
    const steps = packInputSteps(plan, report, asked);
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        read = step.value;
        return;
      }
      tell(REPORT_SHARE + (1 - REPORT_SHARE) * step.value);
    }
  },
  write: (stills) => {
    if (!read) throw new Error('pack worker: asked to write before it had read');
    return packPdf({ ...read, stills }, FONT_SHELF);
  },
  writeCrewFile: (pictures) => {
    if (!read) throw new Error('pack worker: asked to write before it had read');
    return crewFileOf({ ...read, pictures });
  },
};

expose(api);
