import { parentPort, workerData } from 'node:worker_threads';
import { holdModel } from '../core/form/models/modelShelf';
import type { Plan } from '../core/plan/schema/plan';
import { litSetup } from '../core/report/report';
import type { HeldModels } from './holdModels';

// Reads the setups of one plan, one after another, as their places in the plan come in.
const port = parentPort;
if (!port) throw new Error('worker: expected to be started as a worker');
const { plan, models } = workerData as { readonly plan: Plan; readonly models: HeldModels };
for (const [sha256, model] of models) holdModel(sha256, model);
port.on('message', (place: number) => port.postMessage(litSetup(plan, plan.setups[place])));
