import type { Performer } from '../../plan/schema/cast';
import type { PartShape } from '../types';
import type { Bone } from './pose/placeBones';
import { chestShape, neckShape, shirtFrontShape } from './shape/chest';
import { footShape } from './shape/foot';
import { bunHair, longHair, shortHair } from './shape/hair';
import { type HandHold, handShape } from './shape/hand';
import { browShape, eyeShape, headShape, irisShape, lipShape } from './shape/head';
import { capShape, hoodShape } from './shape/headwear';
import { type Drape, hemShape, hipShape, skirtShape } from './shape/hips';
import { forearmShape, shinShape, thighShape, upperArmShape } from './shape/limbs';
import { skullOf } from './shape/skull';
import type { TrunkLook } from './shape/trunk';
import { SIDES, type Skeleton, skeletonOf } from './skeleton';

/** A shape that rides on a bone; a hand has one for each way of holding it, a skirt for each way of lying. */
interface BodyPart {
  readonly name: string;
  readonly bone: Bone;
  readonly shape: PartShape;
  readonly hold?: { readonly hand: 0 | 1; readonly as: HandHold };
  readonly drape?: Drape;
}

/** What a performer looks like, whatever they do: joints, and the shapes that ride on them. */
export interface Body {
  readonly skeleton: Skeleton;
  readonly parts: readonly BodyPart[];
}

/** Hair under a cap has no colour of its own in the record. */
const HAIR_UNDER_CAP = '#2b221c';
const DRAPES: readonly Drape[] = ['hanging', 'gathered'];
const HOLDS: readonly HandHold[] = ['relaxed', 'open', 'grip'];

/** Skin with more blood in it: lips. */
function redder(colour: string): string {
  const channel = (from: number) => Number.parseInt(colour.slice(from, from + 2), 16);
  const hex = (value: number) => Math.round(Math.min(255, value)).toString(16).padStart(2, '0');
  return `#${hex(channel(1) * 0.8)}${hex(channel(3) * 0.58)}${hex(channel(5) * 0.57)}`;
}

function headParts(who: Performer, skeleton: Skeleton): BodyPart[] {
  const { head, headColour, skinColour } = who.clothes;
  const skull = skullOf(skeleton, who.figure === 'female');
  const covered = head === 'cap' || head === 'hood';
  const hairColour = covered ? HAIR_UNDER_CAP : headColour;
  const on = (name: string, shape: PartShape): BodyPart => ({ name, bone: 'head', shape });
  const parts = [
    on('head', headShape(skull, skinColour)),
    on('head', eyeShape(skull)),
    on('head', irisShape(skull)),
    on('head', browShape(skull, hairColour)),
    on('head', lipShape(skull, redder(skinColour))),
  ];
  switch (head) {
    case 'bare':
      return [...parts, on('hair', shortHair(skull, hairColour))];
    case 'bun':
      return [...parts, on('hair', bunHair(skull, hairColour))];
    case 'long hair':
      return [...parts, on('hair', longHair(skull, hairColour))];
    case 'cap':
      return [...parts, on('hair', shortHair(skull, hairColour)), on('cap', capShape(skull, headColour))];
    case 'hood':
      return [...parts, on('hood', hoodShape(skull, headColour))];
  }
}

function buildBody(who: Performer): Body {
  const skeleton = skeletonOf(who);
  const { upper, upperColour, lowerColour, skinColour } = who.clothes;
  const { girth, statureMetres } = skeleton.measures;
  const feminine = who.figure === 'female';
  const look: TrunkLook = { feminine, girth, stature: statureMetres, upper };
  const parts: BodyPart[] = [
    ...headParts(who, skeleton),
    { name: 'head', bone: 'neck', shape: neckShape(skeleton, feminine, girth, skinColour) },
    { name: 'torso', bone: 'chest', shape: chestShape(skeleton, look, upperColour) },
    { name: 'torso', bone: 'pelvis', shape: hemShape(skeleton, look, upperColour) },
    { name: 'legs', bone: 'pelvis', shape: hipShape(skeleton, look, lowerColour) },
  ];
  if (upper === 'coat' || upper === 'jacket') {
    parts.push({ name: 'torso', bone: 'chest', shape: shirtFrontShape(skeleton, look) });
  }
  SIDES.forEach((side, k) => {
    const word = side === 1 ? 'right' : 'left';
    parts.push(
      { name: 'arms', bone: `${word} upper arm`, shape: upperArmShape(skeleton, look, side, upperColour) },
      { name: 'arms', bone: `${word} forearm`, shape: forearmShape(skeleton, look, upperColour) },
      { name: 'legs', bone: `${word} thigh`, shape: thighShape(skeleton, look, lowerColour) },
      { name: 'legs', bone: `${word} shin`, shape: shinShape(skeleton, look, lowerColour) },
      { name: 'feet', bone: `${word} foot`, shape: footShape(skeleton, side) },
    );
    for (const as of HOLDS) {
      parts.push({
        name: 'hands',
        bone: `${word} hand`,
        shape: handShape(skeleton, side, as, skinColour),
        hold: { hand: k === 0 ? 0 : 1, as },
      });
    }
    if (upper === 'coat') {
      for (const drape of DRAPES) {
        parts.push({
          name: 'coat',
          bone: `${word} skirt`,
          shape: skirtShape(skeleton, look, side, drape, upperColour),
          drape,
        });
      }
    }
  });
  return { skeleton, parts };
}

const skeletons = new WeakMap<Performer, Skeleton>();

/** The performer's skeleton alone, for who asks where somebody is and not what they look like; built once. */
export function skeletonFor(who: Performer): Skeleton {
  const skeleton = skeletons.get(who) ?? skeletonOf(who);
  skeletons.set(who, skeleton);
  return skeleton;
}

const bodyOfRecord = new WeakMap<Performer, Body>();
/** Bodies by what shapes them, so that moving a mark, which makes a new record, keeps the same shapes. */
const bodyOfLook = new Map<string, Body>();
const LOOKS_KEPT = 120;

/** The performer's body: skeleton and shapes, built once for each look. */
export function bodyOf(who: Performer): Body {
  const known = bodyOfRecord.get(who);
  if (known) return known;
  const look = JSON.stringify([who.figure, who.statureMetres, who.build, who.clothes]);
  const body = bodyOfLook.get(look) ?? buildBody(who);
  bodyOfLook.delete(look);
  bodyOfLook.set(look, body);
  if (bodyOfLook.size > LOOKS_KEPT) {
    const [oldest] = bodyOfLook.keys();
    if (oldest !== undefined) bodyOfLook.delete(oldest);
  }
  bodyOfRecord.set(who, body);
  return body;
}
