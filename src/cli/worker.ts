import { parentPort, workerData } from 'node:worker_threads';
import type { Plan } from '../core/plan/schema/plan';
import { setupReport } from '../core/report/setupReport';

// Reads the setups of one plan, one after another, as their places in the plan come in.
const port = parentPort;
if (!port) throw new Error('worker: expected to be started as a worker');
const plan = workerData as Plan;
port.on('message', (place: number) => port.postMessage(setupReport(plan, plan.setups[place])));
