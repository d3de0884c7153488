import { readFileSync } from 'node:fs';
import { PerspectiveCamera } from 'three';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { carrierAlong } from '../../src/scene/walk/carrying';
import { Picker } from '../../src/scene/walk/picking';
import { WalkView } from '../../src/scene/walk/walkView';
import { medianMs, ms, printTable } from './table';

/** What a pointer over the walk-round asks for at each move: what lies under it, and what would carry a thing there. */
const parsed = parsePlanText(readFileSync('assets/loft-night.plan.json', 'utf8'));
if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
const demo = parsed.value;

/** The demo with so many more lamp stands and boxes over its roof. */
function crowded(items: number): Plan {
  const stand = demo.gear.find(({ kind }) => kind === 'stand');
  const box = demo.pieces.find(({ kind }) => kind === 'box');
  if (stand?.kind !== 'stand' || box?.kind !== 'box') throw new Error('the demo has a stand and a box');
  const at = (k: number): [number, number, number] => [
    -12 + (k % 50) * 0.48,
    0,
    -8 + Math.floor(k / 50) * 0.4,
  ];
  const more = Array.from({ length: items }, (_, k) => k);
  const boxes = more.filter((k) => k % 2 === 0).map((k) => ({ ...box, id: `more-${k}`, at: at(k) }));
  const stands = more.filter((k) => k % 2 === 1).map((k) => ({ ...stand, id: `more-${k}`, at: at(k) }));
  return { ...demo, pieces: [...demo.pieces, ...boxes], gear: [...demo.gear, ...stands] };
}

const camera = new PerspectiveCamera(42, 712 / 700, 0.1, 4000);
camera.position.set(8, 7, 13);
camera.lookAt(-1, 1, -1);
const view = new WalkView(camera, 712, 700);
const options = { widthAtOne: view.widthAtOne, tolerance: 5, everything: false };
const rows = [0, 140, 2000].flatMap((items) => {
  const plan = crowded(items);
  const picker = new Picker();
  let step = 0;
  const ask = (of: Plan) => {
    step += 37;
    const ray = view.rayAt([step % 712, (step * 7) % 700]);
    picker.look(of, 0, ray, options);
    carrierAlong(of, ray, 0, new Set());
  };
  const edited = () => ask(moveItem(plan, { id: 'stand-2', to: [6.5 + (step % 40) * 0.05, -6.9] }));
  const count = plan.pieces.length + plan.gear.length + plan.cast.length;
  const reach = items > 1000 ? 'the next frame, 16.7 ms' : '≤ 5 ms';
  return [
    { what: `under the pointer, of ${count} items`, reach, reached: ms(medianMs(201, () => ask(plan))) },
    { what: `the same after an edit, of ${count} items`, reach, reached: ms(medianMs(51, edited)) },
  ];
});
printTable(rows);
