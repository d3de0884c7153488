import type { PowerReport } from '../core/report/power/types';
import { type CsvCell, cleanCell, csvOf } from './csv';

const NAMES = [
  'kind',
  'id',
  'label',
  'from',
  'to',
  'supply',
  'circuit',
  'legs',
  'watts',
  'litWatts',
  'voltAmperes',
  'amps',
  'ratedAmps',
  'continuousWatts',
  'share',
  'volts',
  'dropVolts',
  'dropShare',
  'lossWatts',
  'lengthMetres',
  'gauge',
  'litresPerHour',
  'litres',
  'bringLitres',
  'hours',
  'standing',
  'sentence',
] as const;
type Name = (typeof NAMES)[number];
type Row = Partial<Readonly<Record<Name, CsvCell>>>;

const legsIn = (legs: readonly number[]): string => legs.join('; ');

function rowsOf(power: PowerReport): readonly Row[] {
  const sources = power.sources.map(
    (source): Row => ({
      kind: source.kind,
      id: source.id,
      label: source.label,
      legs: source.legs,
      watts: source.watts,
      litWatts: source.litWatts,
      voltAmperes: source.voltAmperes,
      amps: Math.max(...source.legAmps),
      continuousWatts: source.continuousWatts,
      share: source.share,
      volts: source.volts,
      lossWatts: source.lossWatts,
      litresPerHour: source.fuel?.litresPerHour ?? null,
      litres: source.fuel?.litres ?? null,
      bringLitres: source.fuel?.bringLitres ?? null,
      hours: source.fuel?.tankHours ?? source.batteryHours,
    }),
  );
  const circuits = power.circuits.map(
    (circuit): Row => ({
      kind: 'circuit',
      id: circuit.ownerId,
      circuit: circuit.number,
      legs: legsIn(circuit.legs),
      watts: circuit.watts,
      voltAmperes: circuit.voltAmperes,
      amps: Math.max(...circuit.legAmps),
      ratedAmps: circuit.ratedAmps,
      share: circuit.share,
    }),
  );
  const cables = power.cables.map(
    (cable): Row => ({
      kind: 'cable',
      id: cable.id,
      label: cable.label,
      from: cable.fromId,
      to: cable.toId,
      supply: cable.sourceId,
      circuit: cable.circuit,
      legs: legsIn(cable.legs),
      amps: cable.amps,
      ratedAmps: cable.ratedAmps,
      share: cable.share,
      dropVolts: cable.dropVolts,
      lossWatts: cable.lossWatts,
      lengthMetres: cable.lengthMetres,
      gauge: 'awg' in cable.wire ? `${cable.wire.awg} AWG` : `${cable.wire.mm2} mm2`,
    }),
  );
  const loads = power.loads.map(
    (load): Row => ({
      kind: 'load',
      id: load.id,
      label: load.label,
      supply: load.sourceId,
      legs: load.leg,
      watts: load.watts,
      litWatts: load.litWatts,
      voltAmperes: load.voltAmperes,
      amps: load.amps,
      volts: load.volts,
      dropShare: load.dropShare,
      standing: load.feeding,
    }),
  );
  const sentences = power.sentences.map(
    ({ about, itemIds, standing, sentence }): Row => ({
      kind: about,
      id: itemIds.join('; '),
      standing,
      sentence,
    }),
  );
  return [...sources, ...circuits, ...cables, ...loads, ...sentences];
}

/**
 * The power of a plan as comma-separated values: supplies, circuits, cables, loads, then sentences. Watts, volts, amps,
 * metres, litres and hours, none of them rounded; shares are of 1. `clean` is applied to every name out of the plan.
 */
export const powerCsv = (power: PowerReport, clean: (text: string) => string = (text) => text): string =>
  csvOf([
    [...NAMES],
    ...rowsOf(power).map((row) => NAMES.map((name) => cleanCell(clean)(row[name] ?? null))),
  ]);
