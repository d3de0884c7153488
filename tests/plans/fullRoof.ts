import type { Piece } from '../../src/core/plan/schema/pieces';
import type { Plan } from '../../src/core/plan/schema/plan';
import { rooftop } from '../unit/core/plan/edits/rooftop';
import { put } from '../unit/plan/edits/putting';
import { planFrom } from './bare';

const MODEL: Piece = {
  id: 'scan',
  label: 'Scan',
  kind: 'model',
  at: [0, 0, 0],
  headingDegrees: 0,
  asset: { sha256: 'c'.repeat(64), name: 'scan.glb', bytes: 10 },
  up: 'y',
  metresPerUnit: 1,
  extent: { lowest: [-8, 0, -8], highest: [8, 3, 8] },
};

/** A roof with a deck and a hole in it, levels, openings, a scan, a plugged cable, a group, things on things. */
export function fullRoof(): Plan {
  let plan = rooftop();
  plan = put(plan, 'deck', [-10, -8], [10, -8], [10, 8], [-10, 8]);
  plan = put(plan, 'deck-hole', [-8, -7], [-6, -7], [-6, -6], [-8, -6]);
  plan = put(plan, 'wall', [-9, 7], [-3, 7], [-3, 4]);
  plan = put(plan, 'riser', [5, -5]);
  plan = put(plan, 'stair-house', [-7, 0]);
  plan = put(plan, 'crate', [5, -5]);
  plan = put(plan, 'woman', [4.4, -5]);
  plan = put(plan, 'lamp-led-panel', [5.8, -4.8]);
  plan = put(plan, 'combo-stand-arm', [0, 5]);
  plan = put(plan, 'flag', [1.2, 5]);
  plan = put(plan, 'sandbag', [0.2, 5.1]);
  plan = put(plan, 'generator', [8, 6]);
  plan = put(plan, 'cable', [8, 6], [7, 0], [5.8, -4.8]);
  plan = put(plan, 'curved-track', [-2, 2], [2, 2]);
  plan = put(plan, 'outlet', [-8, 5]);
  plan = put(plan, 'battery-2-kwh', [9, -7]);
  plan = put(plan, 'kettle', [3, 7]);
  const document: unknown = JSON.parse(JSON.stringify({ ...plan, pieces: [...plan.pieces, MODEL] }));
  return planFrom(document);
}
