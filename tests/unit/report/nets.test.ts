import { expect, test } from 'vitest';
import { coversOf } from '../../../src/core/clearance/ground/covers';
import { formsAt } from '../../../src/core/form/formsAt';
import { itemOf } from '../../../src/core/plan/items';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import type { ItemReport } from '../../../src/core/report/types';
import { stageOf } from '../../../src/core/sight/stage';
import { planToGlb } from '../../../src/exchange/glb';
import { lightSentence } from '../../../src/screens/sheet/drawing/facts';
import { BARE, BODY, lensOf, planFrom, stillSetup } from '../../plans/bare';

/** A camera that looks at a flag, or at a net where it lets something through, with a crate behind it. */
const withCloth = (transmission?: number): Plan =>
  planFrom({
    ...BARE,
    kit: { ...BARE.kit, bodies: [BODY], lenses: [lensOf('lens', 35)] },
    pieces: [
      {
        id: 'crate',
        label: 'Crate',
        kind: 'box',
        at: [0, 1.3, -4],
        headingDegrees: 0,
        size: [0.4, 0.4, 0.4],
        material: 'timber',
        wish: 'keep out',
      },
    ],
    gear: [
      {
        id: 'cloth',
        label: 'Cloth',
        kind: 'flag',
        place: { at: [0, 1.5, -2] },
        headingDegrees: 0,
        tiltDegrees: 0,
        size: [1.22, 1.22],
        ...(transmission !== undefined && { transmission }),
      },
    ],
    setups: [stillSetup('a', 'lens', { position: [0, 1.5, 0] })],
  });

function reportOn(plan: Plan): Readonly<Record<'cloth' | 'crate', ItemReport>> {
  const { items } = setupReport(plan, plan.setups[0]);
  const of = (id: string): ItemReport => {
    const found = items.find((item) => item.id === id);
    if (!found) throw new Error(`no ${id}`);
    return found;
  };
  return { cloth: of('cloth'), crate: of('crate') };
}

test('a net shows, as a flag does, and what is behind it shows through it; a flag covers it', () => {
  const [flag, net] = [reportOn(withCloth()), reportOn(withCloth(0.5))];
  expect(flag.crate).toMatchObject({ verdict: 'covered', share: 0 });
  expect(net.crate.verdict).toBe('showing');
  expect(net.crate.through.map(({ id }) => id)).toEqual(['cloth']);
  expect(net.cloth.verdict).toBe('showing');
  expect(net.cloth.share).toBeCloseTo(flag.cloth.share, 2);
});

test('for clear ground a net hides nothing behind it, a flag does', () => {
  const covers = (plan: Plan): number => coversOf(stageOf(formsAt(plan, 0)), (item) => item >= 0).length;
  expect(covers(withCloth())).toBe(covers(withCloth(0.5)) + 1);
});

test('the exported scene has a net’s cloth as a porous layer, as open as it is, and its wire as a solid', () => {
  const bytes = planToGlb(withCloth(0.5), 0);
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(12, true);
  const { nodes } = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + length)));
  const extrasOf = (name: string): object =>
    nodes.find((node: { readonly name: string }) => node.name === name)?.extras;
  expect(extrasOf('cloth:cloth')).toMatchObject({ item: 'cloth', part: 'cloth', openness: 0.5 });
  expect(extrasOf('cloth:frame')).not.toHaveProperty('openness');
});

test('what a net takes is said where its numbers are', () => {
  const sentence = (plan: Plan): string | null => {
    const cloth = itemOf(plan, 'cloth');
    return cloth && lightSentence(cloth);
  };
  expect(sentence(withCloth(0.5))).toBe('A lamp behind it loses 1.0\u00a0stop.');
  expect(sentence(withCloth())).toBeNull();
});
