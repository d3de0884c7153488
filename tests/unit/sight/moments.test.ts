import { expect, test } from 'vitest';
import { cameraAt } from '../../../src/core/optics/camera';
import { formsThrough } from '../../../src/core/optics/riding';
import { momentsOf } from '../../../src/core/sight/moments';
import { crowdedPlan } from '../../plans/crowd';

const SPAN = [0, 1] as const;

test('every quarter of a second is asked, and the end', () => {
  const plan = crowdedPlan(12, 1, 1, 1);
  const { coarse, instants } = momentsOf(plan, plan.setups[0], [0, 0.8]);
  expect(coarse).toEqual([0, 6, 12, 18, instants.length - 1]);
  expect(instants[instants.length - 1]).toBeCloseTo(0.8, 9);
});

test('setups of one plan have the same stage around them at the same second, each with its own camera', () => {
  const plan = crowdedPlan(12, 2, 1, 1);
  const [one, other] = plan.setups.map((setup) => momentsOf(plan, setup, SPAN));
  for (const frame of [0, 7, 24]) {
    expect(other.at(frame).stage).toBe(one.at(frame).stage);
    expect(other.at(frame).camera).toEqual(cameraAt(plan, plan.setups[1], one.instants[frame]));
    const forms = formsThrough(plan, plan.setups[1], one.instants[frame]);
    expect(other.at(frame).stage.forms.map(({ parts }) => parts)).toEqual(forms.map(({ parts }) => parts));
  }
});

test('an edit, a cheated mark and a dolly that is ridden each have a stage of their own', () => {
  const plan = crowdedPlan(12, 2, 1, 1);
  const [first, second] = plan.setups;
  const { stage } = momentsOf(plan, first, SPAN).at(12);
  const edited = { ...plan, gear: plan.gear.slice(0, -1) };
  expect(momentsOf(edited, first, SPAN).at(12).stage.forms).toHaveLength(stage.forms.length - 1);

  const [performer] = plan.cast;
  const [mark] = performer.marks;
  const cheats = [
    { performer: performer.id, mark: mark.id, at: [mark.at[0] + 1, mark.at[1]] as [number, number] },
  ];
  const cheating = { ...plan, setups: [first, { ...second, cheats }] };
  const master = momentsOf(cheating, first, SPAN).at(0).stage;
  const cheated = momentsOf(cheating, cheating.setups[1], SPAN).at(0).stage;
  const centreOf = ({ forms, parts }: typeof stage) =>
    parts.find(({ item }) => forms[item].id === performer.id)?.centre;
  expect(centreOf(cheated)).not.toEqual(centreOf(master));

  const dolly = {
    id: 'dolly',
    label: 'Dolly',
    kind: 'dolly' as const,
    size: [1, 1.05, 1.2] as [number, number, number],
    at: [0, 0, 0] as [number, number, number],
    headingDegrees: 0,
    rides: first.id,
  };
  const ridden = { ...plan, gear: [...plan.gear, dolly] };
  const idsOf = (setup: typeof first) =>
    momentsOf(ridden, setup, SPAN)
      .at(0)
      .stage.forms.map(({ id }) => id);
  expect(idsOf(first)).toContain('dolly');
  expect(idsOf(second)).not.toContain('dolly');
});

test('whoever asks for some alone has them alone', () => {
  const plan = crowdedPlan(12, 1, 1, 1);
  const [{ id }] = plan.gear;
  const { at } = momentsOf(plan, plan.setups[0], SPAN, (form) => form.id === id);
  expect(at(3).stage.forms.map((form) => form.id)).toEqual([id]);
  expect(momentsOf(plan, plan.setups[0], SPAN).at(3).stage.forms.length).toBeGreaterThan(1);
});
