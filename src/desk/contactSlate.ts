import { cameraReading } from '../core/continuity/cameraReading';
import { glassOf, spanOf } from '../core/optics/camera';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { formatLength, type LengthSystem } from '../core/units/lengths';
import { formatNumber, NBSP } from '../core/units/numbers';
import { formatSeconds } from '../core/units/seconds';
import { formatStopSetting } from '../core/units/stops';
import { letterOf } from './choose';

/** The moments of a setup that a contact sheet shows. */
export type ContactMoment = 'start' | 'middle' | 'end' | 'still';

/** A setup at one of its moments. */
export interface ContactShot {
  readonly setup: Setup;
  readonly moment: ContactMoment;
  /** On the action's clock. */
  readonly seconds: number;
}

/** Start, middle and end of what a setup covers; one moment where it covers one instant. */
export function shotsOf(plan: Plan, setup: Setup): readonly ContactShot[] {
  const [from, to] = spanOf(plan, setup);
  if (from === to) return [{ setup, moment: 'still', seconds: from }];
  return [
    { setup, moment: 'start', seconds: from },
    { setup, moment: 'middle', seconds: (from + to) / 2 },
    { setup, moment: 'end', seconds: to },
  ];
}

/** What a slate says, field by field. */
export interface Slate {
  /** `A`. */
  readonly letter: string;
  readonly setup: string;
  /** `50 mm, 2× squeeze`. */
  readonly lens: string;
  /** Lens above what is under it: `1.20 m high`. */
  readonly height: string;
  /** `T2.8`. */
  readonly stop: string;
  /** `4.0 s`. */
  readonly time: string;
}

/** The slate of a shot. */
export function slateOf(plan: Plan, { setup, seconds }: ContactShot, lengths: LengthSystem): Slate {
  const { squeeze } = glassOf(plan, setup).lens;
  const { focalMm, heightMetres } = cameraReading(plan, setup, seconds);
  const decimals = (value: number): number => (Number.isInteger(value) ? 0 : 1);
  const focal = `${formatNumber(focalMm, decimals(focalMm))}${NBSP}mm`;
  return {
    letter: letterOf(plan, setup.id),
    setup: setup.label,
    lens: squeeze === 1 ? focal : `${focal}, ${formatNumber(squeeze, decimals(squeeze))}× squeeze`,
    height: `${formatLength(heightMetres, lengths)} high`,
    stop: formatStopSetting(setup.stop),
    time: formatSeconds(seconds),
  };
}

/** A slate's second line: `50 mm, 2× squeeze, 1.20 m high, T2.8, 4.0 s`. */
export const slateLine = ({ lens, height, stop, time }: Slate): string =>
  [lens, height, stop, time].join(', ');

/** Letters and digits of a name for a file, the rest as hyphens: `a-wide-both`. */
export function fileWord(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'plan' : plain.slice(0, 60);
}

/** `a-wide-both-start.png`: the letter makes it the only one of its name. */
export const shotFileName = (plan: Plan, { setup, moment }: ContactShot): string =>
  `${letterOf(plan, setup.id).toLowerCase()}-${fileWord(setup.label)}-${moment}.png`;

/** A slate as the fields that a picture carries in its file. */
export const slateTexts = (title: string, slate: Slate): Readonly<Record<string, string>> => ({
  Title: title,
  Setup: `${slate.letter} ${slate.setup}`,
  Lens: slate.lens,
  Height: slate.height,
  Stop: slate.stop,
  Seconds: slate.time,
  Software: 'Standclear',
});
