import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formsAt } from '../../../src/core/form/formsAt';
import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { isWithin } from '../../../src/core/plan/areas';
import { itemsOf } from '../../../src/core/plan/items';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { surfaceUnder } from '../../../src/core/plan/surfaces';
import { reportOf } from '../../../src/core/report/report';
import { DEMO, readPlan, textOf } from '../../plans/readPlan';
import { coplanarPairs } from '../form/coplanar';
import { boundsOf as boundsOfForm } from '../form/solids';

const STARTS = readdirSync('assets/starts')
  .filter((name) => name.endsWith('.plan.json'))
  .map((name) => `assets/starts/${name}`);
/** What hangs between two places, what stands beyond the roof, and the roof itself. */
const FREE = new Set(['line', 'skyline block', 'deck']);
/** Parts that reach out over what they belong to. */
const OVERHANGING = /^(roof|coping)$/;

const decksOf = (plan: Plan) => plan.pieces.filter((piece) => piece.kind === 'deck');

/** Height of what lies under a place, the piece itself looked through. */
const under = (plan: Plan, spot: Spot, id: string, below: number): number | null => {
  const surface = surfaceUnder(plan, spot, { except: new Set([id]), belowMetres: below + 0.02 });
  return surface.id === null ? null : surface.metres;
};

/** Foot of a piece that stands, as the record has it; null of one that does not stand. */
const footOf = (piece: Piece): number | null =>
  FREE.has(piece.kind) ? null : 'baseMetres' in piece ? piece.baseMetres : 'at' in piece ? piece.at[1] : null;

test('there are four of them, each with a title of its own that is not the demo’s', () => {
  expect(STARTS).toHaveLength(4);
  const titles = [...STARTS.map((path) => readPlan(path).title), readPlan(DEMO).title];
  expect(new Set(titles).size).toBe(titles.length);
  const places = STARTS.map((path) => readPlan(path).place.label);
  expect(new Set(places).size).toBe(places.length);
});

describe.each(STARTS)('%s', (path) => {
  const plan = readPlan(path);
  const furnished = !path.includes('empty');

  test('is read strictly and comes back byte for byte', () => {
    expect(serialisePlan(plan)).toBe(textOf(path));
  });

  test('has ids of its own for everything, openings and holes among them', () => {
    const ids = itemsOf(plan).map(({ record }) => record.id);
    expect(new Set(ids).size).toBe(ids.length);
    const labels = itemsOf(plan).map(({ record }) => record.label);
    expect(new Set(labels).size).toBe(labels.length);
    for (const piece of plan.pieces) {
      const inner = [
        ...('openings' in piece ? (piece.openings ?? []) : []),
        ...('holes' in piece ? (piece.holes ?? []) : []),
      ].map(({ id }) => id);
      expect(new Set(inner).size).toBe(inner.length);
    }
  });

  test('is a place without people, crew or cameras, with a kit to begin with', () => {
    expect([plan.cast, plan.setups]).toEqual([[], []]);
    for (const { kind } of plan.gear) expect(['practical', 'bulb string']).toContain(kind);
    expect(plan.beats).toHaveLength(2);
    for (const list of ['bodies', 'lenses', 'heads', 'stands'] as const) {
      expect(plan.kit[list].length).toBeGreaterThanOrEqual(3);
      for (const entry of plan.kit[list]) expect(BUILT_IN_KIT[list]).toContainEqual(entry);
    }
    expect(plan.notes).toContain('invented');
    expect(plan.place.label).toContain('invented');
  });

  test('is reported without a word but that a camera is wanting', () => {
    expect(reportOf(plan).notices.map(({ where }) => where)).toEqual(['Setups']);
  });

  test('has nothing that floats or sinks', () => {
    for (const piece of plan.pieces) {
      const foot = footOf(piece);
      if (foot === null) continue;
      const places: Spot[] = 'path' in piece ? piece.path : 'at' in piece ? [[piece.at[0], piece.at[2]]] : [];
      for (const spot of places) {
        expect(under(plan, spot, piece.id, foot), `${piece.label} at ${spot}`).toBeCloseTo(foot, 6);
      }
    }
  });

  test('has nothing that stands over an edge of the decks', () => {
    for (const form of formsAt(plan, 0)) {
      const record = plan.pieces.find(({ id }) => id === form.id);
      if (!record || FREE.has(record.kind)) continue;
      const foot = footOf(record) ?? 0;
      for (const { name, shape } of form.parts) {
        const { low } = boundsOfForm([{ name, shape, worldFromPart: null }]);
        if (OVERHANGING.test(name) && low[1] > foot + 0.3) continue;
        for (let k = 0; k < shape.positions.length; k += 3) {
          const spot: Spot = [shape.positions[k], shape.positions[k + 2]];
          const isOnDeck = decksOf(plan).some(({ outline }) => isWithin(outline, spot));
          expect(isOnDeck, `${record.label}, ${name}, at ${spot}`).toBe(true);
        }
      }
    }
  });

  test('has no two faces of an item in one plane', () => {
    for (const { id, parts } of formsAt(plan, 0)) expect(coplanarPairs(parts), id).toEqual([]);
  });

  test.runIf(furnished)(
    'has a city round it, lamps of the place, and something under every roof word',
    () => {
      const kinds = new Set(plan.pieces.map(({ kind }) => kind));
      expect(kinds.has('skyline block')).toBe(true);
      expect(plan.pieces.filter(({ kind }) => kind === 'skyline block').length).toBeGreaterThan(20);
      expect(kinds.size).toBeGreaterThan(8);
      expect(plan.gear.length).toBeGreaterThan(3);
    },
  );
});

test('the furnished ones differ in the shape of their decks', () => {
  const corners = STARTS.map((path) => decksOf(readPlan(path)).map(({ outline }) => outline.length));
  expect(new Set(corners.map((each) => each.join())).size).toBe(3);
  const [warehouse, terrace] = ['l-shaped', 'terrace'].map((word) =>
    readPlan(STARTS.find((path) => path.includes(word)) ?? ''),
  );
  expect(decksOf(warehouse)[0].holes).toHaveLength(1);
  expect(warehouse.pieces.some(({ kind }) => kind === 'riser')).toBe(true);
  expect(new Set(decksOf(terrace).map(({ topMetres }) => topMetres)).size).toBe(2);
  expect(terrace.pieces.some((piece) => piece.kind === 'wall' && (piece.openings ?? []).length > 1)).toBe(
    true,
  );
});
