import type { Wire } from '../../plan/schema/power';
import type { Fuel } from '../../power/fuel';
import type { NightHours } from '../../power/nightHours';
import type { CircuitFlow } from '../../power/ratings';
import type { Stop } from '../../power/stops';
import type { Source } from '../../power/supplies';
import type { Feeding } from '../../power/types';

/** Something that is said of the power: what it is about, whether it breaks, the things that it names. */
export interface PowerSentence {
  readonly about:
    | 'plugs'
    | 'breaker'
    | 'generator'
    | 'battery'
    | 'cord'
    | 'drop'
    | 'ground'
    | 'fuel'
    | 'balance'
    | 'stop'
    | 'whole'
    | 'caution';
  readonly standing: 'breaks' | 'said' | 'holds';
  readonly itemIds: readonly string[];
  readonly sentence: string;
}

/** A source in the report; see DEVELOPERS.md for the fields. */
export interface SourceReport extends Pick<Source, 'id' | 'label' | 'kind' | 'volts'> {
  readonly assumed: boolean;
  readonly legs: number;
  readonly continuousWatts: number | null;
  readonly peakWatts: number | null;
  readonly watts: number;
  readonly voltAmperes: number;
  readonly litWatts: number;
  readonly lossWatts: number;
  readonly legAmps: readonly number[];
  readonly share: number | null;
  readonly startWatts: number;
  readonly startShare: number | null;
  /** Hours are null where nothing is burned. */
  readonly fuel: (Omit<Fuel, 'tankHours'> & { readonly tankHours: number | null }) | null;
  readonly batteryHours: number | null;
  readonly ifItStops: Omit<Stop, 'sourceId'> | null;
}

/** A cable in the report: an item of the plan that carries, or does not. */
export interface CableReport {
  readonly id: string;
  readonly label: string;
  readonly fromId: string | null;
  readonly toId: string | null;
  readonly sourceId: string | null;
  readonly circuit: number | null;
  readonly legs: readonly number[];
  readonly wire: Wire;
  readonly assumed: boolean;
  readonly lengthMetres: number;
  readonly coiledShare: number;
  readonly ohms: number;
  readonly ratedAmps: number;
  readonly amps: number;
  readonly neutralAmps: number;
  readonly share: number;
  readonly dropVolts: number;
  readonly lossWatts: number;
  readonly wetMetres: number;
  /** Performers who walk over it. */
  readonly walkedBy: readonly string[];
}

/** A load in the report. */
export interface LoadReport {
  readonly id: string;
  readonly label: string;
  readonly feeding: Feeding;
  readonly watts: number;
  readonly litWatts: number;
  readonly powerFactor: number;
  readonly voltAmperes: number;
  readonly sourceId: string | null;
  /** Cables from the source up to it. */
  readonly cableIds: readonly string[];
  readonly leg: number | null;
  readonly amps: number | null;
  readonly volts: number | null;
  readonly dropShare: number | null;
}

/** The power of a plan, with its words. */
export interface PowerReport {
  readonly mainsVolts: number;
  readonly mainsHertz: number;
  readonly hours: NightHours;
  readonly sources: readonly SourceReport[];
  readonly distros: readonly {
    readonly id: string;
    readonly label: string;
    readonly assumed: boolean;
    readonly sourceId: string | null;
    readonly inputAmps: number;
    readonly legAmps: readonly number[];
    readonly share: number;
  }[];
  readonly circuits: readonly CircuitFlow[];
  readonly cables: readonly CableReport[];
  readonly loads: readonly LoadReport[];
  readonly totals: {
    readonly watts: number;
    readonly voltAmperes: number;
    readonly lossWatts: number;
    readonly litres: number;
    readonly bringLitres: number;
  };
  readonly sentences: readonly PowerSentence[];
}
