import type { Performer } from '../../plan/schema/cast';

/** Heights above the floor, breadths and lengths of one person, metres, standing upright and bare. */
export interface Measures {
  readonly statureMetres: number;
  readonly eyeMetres: number;
  readonly acromialMetres: number;
  readonly suprasternaleMetres: number;
  readonly waistMetres: number;
  readonly crotchMetres: number;
  readonly kneeMetres: number;
  readonly sittingMetres: number;
  readonly spanMetres: number;
  readonly biacromialMetres: number;
  readonly bideltoidMetres: number;
  readonly headBreadthMetres: number;
  readonly headLengthMetres: number;
  /** How much fuller than medium the trunk and limbs are; 1 for a medium build. */
  readonly girth: number;
}

interface Means {
  readonly stature: number;
  readonly acromial: number;
  readonly suprasternale: number;
  readonly waist: number;
  readonly crotch: number;
  readonly knee: number;
  readonly sitting: number;
  readonly span: number;
  readonly biacromial: number;
  readonly bideltoid: number;
  readonly headBreadth: number;
  readonly headLength: number;
}

/**
 * Mean measures of the 2012 survey in millimetres: 4,082 men, 1,986 women. Waist is at the navel, knee at the middle
 * of the kneecap. The survey is of adults: a child's larger head is not in it.
 * Source: [ansur-ii]
 */
const MEANS: Readonly<Record<Performer['figure'], Means>> = {
  male: {
    stature: 1756.2,
    acromial: 1440.7,
    suprasternale: 1438.6,
    waist: 1056.5,
    crotch: 845.9,
    knee: 488.4,
    sitting: 918.3,
    span: 1814.2,
    biacromial: 415.7,
    bideltoid: 510.4,
    headBreadth: 154.3,
    headLength: 199.5,
  },
  female: {
    stature: 1628.5,
    acromial: 1335.1,
    suprasternale: 1329.7,
    waist: 980.1,
    crotch: 782.3,
    knee: 449.0,
    sitting: 856.6,
    span: 1660.3,
    biacromial: 365.3,
    bideltoid: 450.3,
    headBreadth: 147.8,
    headLength: 189.8,
  },
};

/**
 * Standing eye height as a share of stature. Men: stature less sitting height plus sitting eye height, 1642 of
 * 1756.2 mm. Women: 1505 of 1610 mm, the middle of the British table.
 * Source: [ansur-ii], [bodyspace-eye-height]
 */
const EYE_SHARE: Readonly<Record<Performer['figure'], number>> = { male: 1642 / 1756.2, female: 1505 / 1610 };

/** Factor on breadths and depths of trunk and limbs; common practice, no source. */
const GIRTH: Readonly<Record<Performer['build'], number>> = { slight: 0.92, medium: 1, heavy: 1.14 };
/** Bone widens less than flesh does; common practice, no source. */
const BONE_SHARE_OF_GIRTH = 0.25;

/**
 * The measures of a performer: the mean person of that sex scaled to the stature, with breadths by build.
 * Source: [ansur-ii]
 */
export function measuresOf(who: Pick<Performer, 'figure' | 'statureMetres' | 'build'>): Measures {
  const means = MEANS[who.figure];
  const stature = who.statureMetres;
  const girth = GIRTH[who.build];
  const scaled = (millimetres: number) => (millimetres / means.stature) * stature;
  return {
    statureMetres: stature,
    eyeMetres: EYE_SHARE[who.figure] * stature,
    acromialMetres: scaled(means.acromial),
    suprasternaleMetres: scaled(means.suprasternale),
    waistMetres: scaled(means.waist),
    crotchMetres: scaled(means.crotch),
    kneeMetres: scaled(means.knee),
    sittingMetres: scaled(means.sitting),
    spanMetres: scaled(means.span),
    biacromialMetres: scaled(means.biacromial) * (1 + (girth - 1) * BONE_SHARE_OF_GIRTH),
    bideltoidMetres: scaled(means.bideltoid) * (1 + (girth - 1) * 0.7),
    headBreadthMetres: scaled(means.headBreadth),
    headLengthMetres: scaled(means.headLength),
    girth,
  };
}
