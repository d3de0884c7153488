import { describe, expect, test } from 'vitest';
import { SUPPORTS } from '../../../../src/core/kit/supports';
import type { CameraKey, Setup } from '../../../../src/core/plan/schema/setup';
import { shotsOf, slateOf, slateTexts } from '../../../../src/desk/contactSlate';
import { setupSheet } from '../../../../src/desk/crew/setupSheet';
import { carriedFor } from '../../../../src/screens/crew/setup/carrying';
import { placeFacts, plainFacts } from '../../../../src/screens/crew/setup/factWords';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const [master] = plan.setups;
const [key] = master.move.keys;

/** The first setup with its tilt from one to another over its two seconds, and what else is said of it. */
function tilting(from: number, to: number, more: Partial<Setup> = {}): Setup {
  const at = (atSeconds: number, tiltDegrees: number): CameraKey => ({ ...key, atSeconds, tiltDegrees });
  return { ...master, support: 'sticks', move: { ease: 'linear', keys: [at(0, from), at(2, to)] }, ...more };
}

const factsOf = (setup: Setup, name: string) => {
  const own = { ...plan, setups: [setup] };
  const sheet = setupSheet(own, setup);
  const facts = [...plainFacts(own, setup, sheet), ...placeFacts(setup, sheet, 'm')];
  const found = facts.find((fact) => fact.name === name);
  return found && [found.value, ...(found.more === undefined ? [] : [found.more])];
};

describe('on the sheet of a setup', () => {
  test('tilt has its sign, and what it has come to at the end where that differs', () => {
    expect(factsOf(tilting(-12.5, -12.5), 'tilt')).toEqual(['−12.5°']);
    expect(factsOf(tilting(3, -4.25), 'tilt')).toEqual(['+3.0°', expect.stringMatching(/^then −4\.[23]°$/)]);
    expect(factsOf(tilting(0, 0), 'tilt')).toEqual(['0.0°']);
    expect(factsOf(tilting(-2, 8), 'move')).toEqual(['tilt 10.0° up', '2.0\u00a0s']);
    expect(factsOf(tilting(8, -2), 'move')).toEqual(['tilt 10.0° down', '2.0\u00a0s']);
  });

  test.each([
    [2.8, 'T2.8'],
    [4, 'T4'],
    [5.6, 'T5.6'],
    [11, 'T11'],
  ])('a stop of %d is %s', (stop, word) => {
    expect(factsOf(tilting(0, 0, { stop }), 'stop')).toEqual([word]);
  });

  test.each(SUPPORTS)('$support is said, and what it is goes up with the camera', ({ support, label }) => {
    const setup = tilting(0, 0, { support });
    expect(factsOf(setup, 'support')).toEqual([support]);
    expect(carriedFor(plan, setup, 'm').map(({ words }) => words)).toContain(label);
  });
});

describe('in a picture’s slate', () => {
  test('tilt and stop are those of the moment', () => {
    const setup = tilting(-6, 4, { stop: 4 });
    const own = { ...plan, setups: [setup] };
    const said = shotsOf(own, setup).map((shot) => {
      const { Tilt, Stop, Standclear } = slateTexts(own, shot, slateOf(own, shot, 'm'));
      const { tiltDegrees, stop } = JSON.parse(Standclear);
      return [Tilt, Stop, Math.round(tiltDegrees * 10) / 10, stop];
    });
    expect(said).toEqual([
      ['−6.0°', 'T4', -6, 4],
      ['−1.0°', 'T4', -1, 4],
      ['4.0°', 'T4', 4, 4],
    ]);
  });
});
