import { expect, it } from 'vitest';
import { setupReport } from '../../../../src/core/report/setupReport';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { remediesOf } from './remedied';

const whole = readPlan(DEMO);
const demo = { ...whole, setups: whole.setups.filter(({ id }) => id === 'alongside' || id === 'high') };

const OFFERED = [
  'stand-1: A pan of 5.6 degrees to the right clears it in A, within the safety margin. [{"setupId":"alongside","byDegrees":5.59375}]',
  'head-1: A pan of 4.3 degrees to the right clears it in A. [{"setupId":"alongside","byDegrees":4.34375}]',
  'stand-2: The move of A 0.4 m shorter at its start clears it in A. [{"setupId":"alongside","keyIndex":0,"patch":{"position":[-1.0125,1.5,3.3],"headingDegrees":16.331562,"tiltDegrees":-0.638437}}]',
  'stand-2: 1.2 m to frame right of A clears it in all setups. “Head 2, backlight” loses 0.1 stops on Nuno. [{"id":"stand-2","to":[7.535592,-6.143729]}]',
  'bag-1: 0.9 m towards the stair house clears it in all setups. [{"id":"bag-1","to":[-7.386788,-6.247703]}]',
  'bag-1: A pan of 3.4 degrees to the right clears it in A, within the safety margin. [{"setupId":"alongside","byDegrees":3.40625}]',
  'bag-2: 0.5 m to frame right of A clears it in all setups. [{"id":"bag-2","to":[7.179268,-6.367391]}]',
  'bag-2: A pan of 2.3 degrees to the left clears it in A. [{"setupId":"alongside","byDegrees":-2.25}]',
  'bag-2: The move of A 0.2 m shorter at its start clears it in A. [{"setupId":"alongside","keyIndex":0,"patch":{"position":[-1.2575,1.5,3.3],"headingDegrees":20.306688,"tiltDegrees":-0.639313}}]',
  'stand-4: Drying 1.4 m by 10.5 m of the deck takes its image out of B. [{"wetness":"dry","outline":[[1.46228,-1.361389],[1.116339,-0.028536],[11.312836,2.617952],[11.658776,1.2851]]}]',
  'head-4: Drying 0.8 m by 1.6 m of the deck takes its image out of B. [{"wetness":"dry","outline":[[1.064141,-1.262083],[0.863646,-0.489605],[2.436514,-0.081369],[2.637009,-0.853846]]}]',
];

it('a quicker search offers for the findings of the demo what the slower one did, to the last digit', () => {
  const seen = demo.setups.map((setup) => setupReport(demo, setup));
  const tolerance = { levelStops: 0.5, angleDegrees: 15 };
  const offered = seen.flatMap(({ id: setupId, items }) =>
    items
      .filter(({ wish, verdict }) => wish === 'keep out' && (verdict === 'showing' || verdict === 'mirrored'))
      .flatMap(({ id }) =>
        remediesOf(demo, id, { setupId, tolerance, seen })
          .filter(({ asksReason }) => !asksReason)
          .map(({ words, edits }) => `${id}: ${words} ${JSON.stringify(edits.map(({ args }) => args))}`),
      ),
  );
  expect(offered).toEqual(OFFERED);
}, 200_000);
