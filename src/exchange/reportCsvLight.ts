import type { ItemReads, PartReads } from '../core/light/readsInTheDark';
import type { FaceThrough, LevelsThrough, LightSentence } from '../core/report/light/types';
import type { JudgedSetup, Span } from '../core/report/types';
import type { CsvCell } from './csv';

/** The cells of a row by the names of their columns. */
export type CsvRecord = Readonly<Record<string, CsvCell>>;

/** The columns of light, behind all others: what a row is of, and its numbers. */
export const LIGHT_COLUMNS = [
  'light',
  'about',
  'beat',
  'isShown',
  'key',
  'keyFedBy',
  'cameraSide',
  'keyLux',
  'keyFootcandles',
  'keyStops',
  'fillLux',
  'fillFootcandles',
  'fillStops',
  'back',
  'backLux',
  'backFootcandles',
  'backStops',
  'ratio',
  'ratioStops',
  'lux',
  'footcandles',
  'stops',
  'part',
  'luminance',
  'around',
  'contrastStops',
  'stopsUnder',
  'reads',
  'blackedReads',
  'flaggedReads',
  'flaggedOff',
  'likeUprights',
  'frameX',
  'frameY',
  'lengthMetres',
  'widthMetres',
  'incidenceDegrees',
  'askedLux',
  'greyLuminance',
  'flicker',
  'mainsHertz',
  'flickerStops',
  'safeAngles',
  'fedBy',
  'plane',
  'metres',
  'bearingDegrees',
  'elevationDegrees',
  'shadowEdgeMetres',
] as const;

const spanList = (spans: readonly Span[]): string => spans.map(([from, to]) => `${from} to ${to}`).join('; ');

function exposureRow({ light }: JudgedSetup): CsvRecord {
  const { flicker } = light;
  return {
    light: 'exposure',
    askedLux: light.askedLux,
    greyLuminance: light.greyLuminance,
    mainsHertz: flicker.hertz,
    flickerStops: flicker.stops,
    safeAngles: flicker.safeAngles.join('; '),
    flicker: flicker.verdict,
  };
}

const faceRow = ({ beatId, seconds }: LevelsThrough, face: FaceThrough): CsvRecord => ({
  light: 'level',
  beat: beatId,
  atSeconds: seconds,
  performers: face.performerId,
  isShown: String(face.isShown),
  key: face.key?.itemId ?? null,
  keyFedBy: face.key?.fedBy ?? null,
  cameraSide: face.cameraSide,
  keyLux: face.key?.lux ?? null,
  keyFootcandles: face.key?.footcandles ?? null,
  keyStops: face.key?.stops ?? null,
  fillLux: face.fill.lux,
  fillFootcandles: face.fill.footcandles,
  fillStops: face.fill.stops,
  back: face.back?.itemId ?? null,
  backLux: face.back?.lux ?? null,
  backFootcandles: face.back?.footcandles ?? null,
  backStops: face.back?.stops ?? null,
  ratio: face.ratio,
  ratioStops: face.ratioStops,
  shadowEdgeMetres: face.key?.shadowEdgeMetres ?? null,
});

const givenRow = (
  { beatId, seconds }: LevelsThrough,
  { performerId, isShown }: FaceThrough,
  given: FaceThrough['given'][number],
): CsvRecord => ({
  light: 'given',
  item: given.itemId,
  beat: beatId,
  atSeconds: seconds,
  performers: performerId,
  isShown: String(isShown),
  fedBy: given.fedBy,
  plane: given.plane,
  lux: given.lux,
  share: given.share,
  metres: given.metres,
  bearingDegrees: given.bearingDegrees,
  elevationDegrees: given.elevationDegrees,
  shadowEdgeMetres: given.shadowEdgeMetres,
});

const probeRow = (
  { beatId, seconds }: LevelsThrough,
  { id, lux, footcandles, stops }: LevelsThrough['probes'][number],
): CsvRecord => ({
  light: 'probe',
  item: id,
  beat: beatId,
  atSeconds: seconds,
  lux,
  footcandles,
  stops,
});

const partRow = ({ itemId, seconds, ...reads }: ItemReads, part: PartReads): CsvRecord => ({
  light: 'reads',
  item: itemId,
  atSeconds: seconds,
  part: part.name,
  share: part.share,
  luminance: part.luminance,
  around: part.around,
  contrastStops: part.contrastStops,
  stopsUnder: part.stopsUnder,
  reads: reads.verdict,
  blackedReads: reads.blackedVerdict,
  flaggedReads: reads.flaggedVerdict,
  flaggedOff: part.flagged?.itemId ?? null,
  likeUprights: part.likeUprights,
});

const sentenceRow = ({ about, itemId, performerId, ...said }: LightSentence): CsvRecord => ({
  light: 'sentence',
  about,
  item: itemId,
  performers: performerId,
  standing: said.standing,
  atSeconds: said.atSeconds,
  sentence: `${said.name}${said.colon ? ':' : ''} ${said.text}`,
});

/**
 * The light of a setup as rows: its exposure and shutter; every face at every beat with what each lamp gives it, and
 * every probe; every highlight; every part that was asked how it reads; then the sentences, with what each is about.
 */
export function lightRecords(setup: JudgedSetup): readonly CsvRecord[] {
  const { light } = setup;
  return [
    exposureRow(setup),
    ...light.levels.flatMap((beat) => [
      ...beat.faces.flatMap((face) => [
        faceRow(beat, face),
        ...face.given.map((given) => givenRow(beat, face, given)),
      ]),
      ...beat.probes.map((level) => probeRow(beat, level)),
    ]),
    ...light.highlights.map(
      ({ lampId, spans, brightest }): CsvRecord => ({
        light: 'highlight',
        item: lampId,
        spans: spanList(spans),
        atSeconds: brightest.seconds,
        luminance: brightest.luminance,
        stops: brightest.stops,
        frameX: brightest.frame[0],
        frameY: brightest.frame[1],
        lengthMetres: brightest.lengthMetres,
        widthMetres: brightest.widthMetres,
        incidenceDegrees: brightest.incidenceDegrees,
      }),
    ),
    ...light.reads.flatMap((reads) => reads.parts.map((part) => partRow(reads, part))),
    ...light.sentences.map(sentenceRow),
  ];
}
