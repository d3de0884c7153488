import { length, subtract } from '../../form/build/vector';
import { formsAt } from '../../form/formsAt';
import { headPlace } from '../../form/gear/headPlace';
import { headClassOf } from '../../form/gear/references';
import { lampsAt } from '../../form/lamps';
import { type SetupFlicker, setupFlicker } from '../../light/mains';
import { flickerOf, isLamp } from '../../plan/cues';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { solidOf } from '../../sight/closed';
import { solidFinder } from '../../sight/inside';
import { formatLength } from '../../units/lengths';
import { letterOf } from '../continuity/names';
import type { Notice } from '../types';
import { flickerText } from './flickerSentence';
import { itemName } from './lightWords';

/** An aim nearer than this to where a head tilts lies in its own housing, metres. Source: common practice, no source */
const NEAREST_AIM_METRES = 0.05;

/** Heads that are aimed at themselves, and so look nowhere in particular. */
const aimNotices = (plan: Plan): readonly Notice[] =>
  plan.gear.flatMap((gear): Notice[] => {
    if (gear.kind !== 'head') return [];
    const { pivot } = headPlace(gear, headClassOf(gear, plan), plan);
    const metres = length(subtract(gear.aim, pivot));
    if (metres >= NEAREST_AIM_METRES) return [];
    return [
      {
        where: `Head ${gear.label}`,
        sentence: `${named(gear.label)} is aimed at itself: found an aim ${formatLength(metres, 'm')} from its housing, expected ${formatLength(NEAREST_AIM_METRES, 'm')} or more. Aim it at what it is to light.`,
      },
    ];
  });

/** Lamps that shine inside of a set piece, where all of their light stays. */
function insideNotices(plan: Plan): readonly Notice[] {
  const lamps = lampsAt(plan, 0);
  if (lamps.length === 0) return [];
  // A lamp may hang in a hole of a deck, whose top and sides are sheets: only what is closed by itself shuts it in.
  const solids = formsAt(plan, 0)
    .filter(({ section }) => section === 'piece')
    .map((form) => ({ ...form, parts: form.parts.filter(({ shape }) => solidOf(shape).isClosed) }));
  const around = solidFinder(solids);
  const said = new Set<string>();
  return lamps.flatMap(({ itemId, position }): Notice[] => {
    const piece = said.has(itemId) ? null : around(position);
    if (!piece) return [];
    said.add(itemId);
    const label = itemName(plan, itemId);
    return [
      {
        where: `Lamp ${label}`,
        sentence: `${named(label)} shines inside ${named(piece.label)}: found all of its light in there, expected it in the open. Move one of them.`,
      },
    ];
  });
}

/** Whether lamps are lit that go out between pulses for certain; of bulbs it is only said in the setup's light. */
export const flickersSurely = ({ verdict, lamps }: SetupFlicker): boolean =>
  verdict === 'flickers' && lamps.some(({ pulses }) => pulses === 'surely');

/** Setups that flicker under the lamps on the mains, those with the same shutter together. */
function flickerNotices(plan: Plan): readonly Notice[] {
  const byText = new Map<string, Setup[]>();
  for (const setup of plan.setups) {
    const flicker = setupFlicker(plan, setup);
    if (!flickersSurely(flicker)) continue;
    const text = flickerText(plan, setup, flicker);
    byText.set(text, [...(byText.get(text) ?? []), setup]);
  }
  return [...byText].map(([text, setups]) => {
    const letters = setups.map(({ id }) => letterOf(plan, id));
    const which =
      setups.length === plan.setups.length && setups.length > 1
        ? 'all setups'
        : `${letters.length > 1 ? 'setups' : 'setup'} ${letters.join(', ')}`;
    return { where: 'Mains', sentence: `In ${which} ${text}` };
  });
}

/** Cues that begin or end a flicker of lamps that have no pattern to flicker by. */
const cueNotices = (plan: Plan): readonly Notice[] =>
  plan.gear.flatMap((gear): Notice[] => {
    if (!isLamp(gear) || flickerOf(gear) !== null) return [];
    const count = (gear.cues ?? []).filter(({ flickers }) => flickers !== undefined).length;
    if (count === 0) return [];
    const found = count === 1 ? 'a cue about its flicker' : `${count} cues about its flicker`;
    return [
      {
        where: `Lamp ${gear.label}`,
        sentence: `${named(gear.label)} has no flicker: found ${found}, expected a pattern to flicker by. ${
          gear.kind === 'practical' ? 'Give it one, or take' : 'Only a practical has one: take'
        } ${count === 1 ? 'the cue' : 'them'} out.`,
      },
    ];
  });

/** What a person should know about a plan's lamps before trusting its light. */
export const lightNotices = (plan: Plan): readonly Notice[] => [
  ...aimNotices(plan),
  ...insideNotices(plan),
  ...cueNotices(plan),
  ...flickerNotices(plan),
];
