import { describe, expect, test } from 'vitest';
import { SUPPORTS, type SupportClass } from '../../../src/core/kit/supports';
import type { CameraKey, Setup } from '../../../src/core/plan/schema/setup';
import { type DepartmentFault, departmentFaults } from '../../../src/core/report/cameraNotices';
import { smallRoof } from '../smallRoof';

const roof = smallRoof();
const [master] = roof.setups;
const [key] = master.move.keys;

/** Objections of one kind to a camera that goes from one place to another on a support. */
function faultsOf(
  support: Setup['support'],
  about: DepartmentFault['about'],
  from: readonly [number, number, number],
  to: readonly [number, number, number] = from,
): readonly DepartmentFault[] {
  const at = (atSeconds: number, [x, y, z]: readonly [number, number, number]): CameraKey => ({
    ...key,
    atSeconds,
    position: [x, y, z],
  });
  const setup: Setup = { ...master, support, move: { ease: 'linear', keys: [at(0, from), at(2, to)] } };
  return departmentFaults({ ...roof, setups: [setup] }, setup).filter((fault) => fault.about === about);
}

const metres = (value: number): string => `${value.toFixed(2)}\u00a0m`;
/** How far each goes without being moved, written out: a jib swings to either side. */
const REACH: Readonly<Record<Setup['support'], number | null>> = {
  sticks: 0,
  slider: 1.2,
  dolly: null,
  jib: 10,
  ladder: 0,
  handheld: null,
  'body rig': null,
};
const HEIGHTS: Readonly<Record<Setup['support'], readonly [number, number]>> = {
  sticks: [0.3, 1.9],
  slider: [0.3, 1.9],
  dolly: [0.3, 2.2],
  jib: [0.2, 3.6],
  ladder: [1.2, 3.6],
  handheld: [0.2, 1.9],
  'body rig': [0.4, 2],
};

describe.each(SUPPORTS.map((support): [string, SupportClass] => [support.support, support]))(
  'on %s',
  (_, { support, label }) => {
    const [lowest, highest] = HEIGHTS[support];
    const reach = REACH[support];

    test('a lens goes as low and as high as its class, and is told the nearest height beyond', () => {
      for (const height of [lowest + 0.01, highest - 0.01])
        expect(faultsOf(support, 'height', [0, height, 4]), `${height}`).toEqual([]);
      for (const [height, nearest] of [
        [lowest - 0.05, lowest],
        [highest + 0.05, highest],
      ]) {
        const [fault, ...others] = faultsOf(support, 'height', [0, height, 4]);
        expect(others).toEqual([]);
        expect(fault?.nearest).toBeCloseTo(nearest, 9);
        expect(fault?.sentence).toBe(
          `The lens of ${master.label} is ${metres(height)} high at 0.0\u00a0s; on ${label.toLowerCase()} it goes from ${metres(lowest)} to ${metres(highest)}. The nearest height is ${metres(nearest)}.`,
        );
      }
    });

    test('a move that rises beyond it is told at its end', () => {
      const [fault] = faultsOf(support, 'height', [0, highest - 0.2, 4], [0, highest + 0.2, 4]);
      expect(fault?.sentence).toContain(`${metres(highest + 0.2)} high at 2.0\u00a0s`);
    });

    test('a camera goes as far as its class without being carried', () => {
      const height = (lowest + highest) / 2;
      const goes = (far: number) => faultsOf(support, 'travel', [-far / 2, height, 4], [far / 2, height, 4]);
      if (reach === null) {
        expect(goes(8)).toEqual([]);
        return;
      }
      expect(goes(reach)).toEqual([]);
      const [fault] = goes(reach + 0.4);
      expect(fault?.nearest).toBe(reach);
      const carries =
        reach === 0
          ? 'stays where it stands: a slider, a dolly or a shoulder would carry it'
          : `carries it ${metres(reach)} at most`;
      expect(fault?.sentence).toBe(
        `${master.label} takes its camera ${metres(reach + 0.4)} away, and what it is on, ${label.toLowerCase()}, ${carries}.`,
      );
    });
  },
);
