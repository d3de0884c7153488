import type { Plan } from '../../../src/core/plan/schema/plan';
import { planFrom } from '../../plans/bare';
import { dice, drawFrom } from '../../plans/draw';
import { withActing } from '../../plans/someActing';
import { someAreas } from '../../plans/someAreas';
import { smallRoofDocument } from '../../unit/smallRoof';

/**
 * A small roof with things that have a wish, two performers who walk, and one camera that travels and pans,
 * now gently, now in a whip: two to three seconds of action. In every other one the performers face and look at each
 * other, walk round corners and hand things over.
 */
export function movingPlan(seed: number): Plan {
  const roll = dice(seed + 31337);
  const base = smallRoofDocument();
  const [setup] = base.setups;
  const seconds = Math.round(roll(2, 3) * 24) / 24;
  const spot = (): [number, number] => [roll(-7, 7), roll(-6, 6)];
  const stand = (k: number) => {
    const [x, z] = spot();
    return {
      id: `stand-${k}`,
      label: `Stand ${k}`,
      kind: 'stand',
      stand: 'tall',
      at: [x, 0, z],
      headingDegrees: roll(0, 360),
      heightMetres: roll(1.5, 3.8),
    };
  };
  const crate = (k: number) => {
    const [x, z] = spot();
    return {
      id: `crate-${k}`,
      label: `Crate ${k}`,
      kind: 'box',
      wish: k % 3 === 0 ? 'either' : 'keep out',
      at: [x, roll(0, 1) < 0.3 ? roll(1, 3) : 0, z],
      headingDegrees: roll(0, 360),
      size: [roll(0.2, 2), roll(0.3, 2.2), roll(0.2, 1)],
      material: 'timber',
    };
  };
  const performer = (k: number) => {
    const mark = (beat: string) => ({
      id: `p${k}-${beat}`,
      beat,
      at: spot(),
      headingDegrees: roll(0, 360),
      stance: 'stand',
      holdSeconds: beat === 'start' ? roll(0, 0.4) : 0,
    });
    return {
      ...base.cast[0],
      id: `performer-${k}`,
      label: `Performer ${k}`,
      wish: 'must show',
      marks: [mark('start'), mark('end')],
    };
  };
  /** Rides along with the camera, and its column rises and falls with it. */
  const dolly = {
    id: 'dolly',
    label: 'Dolly',
    kind: 'dolly',
    wish: 'keep out',
    at: [0, 0, 0],
    headingDegrees: roll(0, 360),
    size: [0.66, 1.05, 1.2],
    rides: setup.id,
  };
  const whips = seed % 3 === 0;
  let [x, z] = spot();
  // Towards the middle of the roof, more or less; a whip turns past it.
  let heading = (Math.atan2(-x, z) * 180) / Math.PI + roll(-30, 30);
  const keys = [0, roll(0.3, 0.7) * seconds, seconds].map((atSeconds) => {
    heading += roll(-1, 1) * (whips ? 150 : 30);
    [x, z] = [x + roll(-1.5, 1.5), z + roll(-1.5, 1.5)];
    return {
      atSeconds,
      position: [x, roll(0.4, 2.2), z],
      headingDegrees: heading,
      tiltDegrees: roll(-25, 8),
      rollDegrees: roll(-5, 5),
    };
  });
  const plan = planFrom({
    ...base,
    ground: {
      surface: 'concrete',
      wetness: seed % 4 === 0 ? 'dry' : 'wet down',
      ...(seed % 3 !== 0 && { areas: someAreas(drawFrom(seed + 1903)) }),
    },
    pieces: [...base.pieces, ...[1, 2, 3, 4].map(crate)],
    cast: [1, 2].map(performer),
    gear: [...[1, 2, 3, 4].map(stand), ...(seed % 3 === 1 ? [dolly] : [])],
    beats: [
      { id: 'start', label: 'Start', atSeconds: 0 },
      { id: 'end', label: 'End', atSeconds: seconds },
    ],
    setups: [
      {
        ...setup,
        lens: seed % 2 === 0 ? 'wide' : 'long',
        delivery: seed % 5 === 0 ? 16 / 9 : 2.39,
        span: { from: 'start', to: 'end' },
        move: { ease: seed % 2 === 0 ? 'eased' : 'linear', keys },
      },
    ],
  });
  return seed % 2 === 1 ? planFrom(withActing(plan, drawFrom(seed + 4711))) : plan;
}
