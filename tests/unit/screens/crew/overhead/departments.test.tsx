import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import type { Gear } from '../../../../../src/core/plan/schema/gear';
import type { Plan } from '../../../../../src/core/plan/schema/plan';
import { DEPARTMENTS, type Department } from '../../../../../src/desk/crew/crewStore';
import { departmentOf } from '../../../../../src/desk/crew/overhead/departments';
import { ROOF_LAYERS, type RoofLayer } from '../../../../../src/desk/crew/overhead/overheadStore';
import { RoofPlan } from '../../../../../src/screens/crew/overhead/RoofPlan';
import { roofHits } from '../../../../../src/screens/crew/overhead/roofHits';
import { EVERY_KIND, planOf } from '../../../form/gear/plans';
import { smallRoof } from '../../../smallRoof';

/** Whose each kind of gear is, written out by the trades; a stand is with what it carries. */
const WHOSE: Readonly<Record<Exclude<Gear['kind'], 'stand'>, Department>> = {
  head: 'light',
  practical: 'light',
  'bulb string': 'light',
  flag: 'grip',
  frame: 'grip',
  bounce: 'grip',
  ladder: 'grip',
  sandbag: 'grip',
  generator: 'power',
  distro: 'power',
  outlet: 'power',
  battery: 'power',
  appliance: 'power',
  cable: 'power',
  track: 'camera',
  dolly: 'camera',
  cart: 'camera',
  monitor: 'camera',
};

const every: Plan = planOf(EVERY_KIND);
const roof = smallRoof();

/** What of the gear a department sees plainly, and of cast, cameras and throws whether it does. */
function plainFor(plan: Plan, department: Department, hidden: ReadonlySet<RoofLayer> = new Set()) {
  const markup = renderToStaticMarkup(
    <svg role="presentation">
      <RoofPlan plan={plan} seconds={0} setupId={null} hidden={hidden} department={department} />
    </svg>,
  );
  const things = [...markup.matchAll(/class="thing([^"]*)" data-thing="([^"]*)"/g)];
  const layer = (name: string): string =>
    new RegExp(`class="${name}( crew-faded)?"`).exec(markup)?.[1] ??
    (markup.includes(`class="${name}`) ? 'plain' : 'none');
  return {
    plain: things.flatMap(([, faded, id]) => (faded.includes('crew-faded') ? [] : [id])),
    all: things.map(([, , id]) => id),
    cast: layer('cast-layer').trim(),
    cameras: layer('cameras').trim(),
  };
}

describe('departments on the overhead', () => {
  test('each kind of gear is somebody’s, and a stand is its lamp’s, else grip’s', () => {
    for (const gear of every.gear)
      if (gear.kind !== 'stand') expect(departmentOf(every, gear), gear.kind).toBe(WHOSE[gear.kind]);
    const [carrying, bare] = ['stand-in', 'stand-out'].map((id) => roof.gear.find((gear) => gear.id === id));
    if (!carrying || !bare) throw new Error('the small roof has no stands');
    expect(departmentOf(roof, carrying)).toBe('light');
    expect(departmentOf({ ...roof, gear: [bare] }, bare)).toBe('grip');
  });

  test.each(DEPARTMENTS)(
    '%s sees its own plainly and all else faded, with nothing left out',
    (department) => {
      const { plain, all } = plainFor(every, department);
      const own = every.gear.filter(
        (gear) => department === 'all' || departmentOf(every, gear) === department,
      );
      expect([...plain].sort()).toEqual(own.map(({ id }) => id).sort());
      expect([...all].sort()).toEqual(every.gear.map(({ id }) => id).sort());
      if (!['all', 'cast'].includes(department)) expect(own.length).toBeGreaterThan(0);
    },
  );

  test('the cast is for the cast, cameras are for the camera, and all is for whoever asks for all', () => {
    const seen = DEPARTMENTS.map((department) => {
      const { cast, cameras } = plainFor(roof, department);
      return [department, cast, cameras];
    });
    expect(seen).toEqual(
      DEPARTMENTS.map((department) => [
        department,
        ['all', 'cast'].includes(department) ? 'plain' : 'crew-faded',
        ['all', 'camera'].includes(department) ? 'plain' : 'crew-faded',
      ]),
    );
  });

  test('a layer that is left out takes its own with it, drawn and tapped alike', () => {
    const tapped = (hidden: ReadonlySet<RoofLayer>): string[] => [
      ...new Set(roofHits(every, 0, hidden, (spot) => spot).map(({ target }) => target)),
    ];
    const whole = plainFor(every, 'all').all;
    const gone = (layer: RoofLayer): string[] => {
      const left = plainFor(every, 'all', new Set([layer])).all;
      const taps = tapped(new Set([layer]));
      expect(
        taps.filter((id) => whole.includes(id) && !left.includes(id)),
        layer,
      ).toEqual([]);
      return every.gear.flatMap(({ id, kind }) => (left.includes(id) ? [] : [kind])).sort();
    };
    const found = Object.fromEntries(ROOF_LAYERS.map((layer) => [layer, gone(layer)]));
    const of =
      (...kinds: string[]) =>
      (kind: string) =>
        kinds.includes(kind);
    expect(found.cables.every(of('cable')) && found.cables.length > 0).toBe(true);
    expect(found.cameras.every(of('track', 'dolly')) && found.cameras.length > 0).toBe(true);
    expect([found.marks, found.throws]).toEqual([[], []]);
    expect(found.stands.some(of('cable', 'track', 'dolly'))).toBe(false);
    expect(found.stands.length + found.cables.length + found.cameras.length).toBe(every.gear.length);
  });
});
