import type { Body } from '../plan/schema/kit';
import { GATE_FORMATS, type GateFormat } from './formats';

/** A body whose modes are gates of the list of formats, in the order asked for. */
function body(id: string, label: string, formatIds: readonly string[]): Body {
  const formats = formatIds.flatMap((formatId): GateFormat[] =>
    GATE_FORMATS.filter((format) => format.id === formatId),
  );
  return {
    id,
    label,
    modes: formats.map(({ id: mode, label: name, gateMm }) => ({
      id: mode,
      label: name,
      gateMm: [gateMm[0], gateMm[1]],
    })),
    source: [...new Set(formats.map(({ source }) => source))].join(', '),
  };
}

/** Cameras by the gates that they have. */
export const BODIES: readonly Body[] = [
  body('film-35', '35 mm film camera', [
    'full-aperture-35',
    'anamorphic-35',
    'academy-35',
    'three-perf-35',
    'two-perf-35',
  ]),
  body('digital-full-frame', 'Digital camera, full frame', ['still-35']),
  body('digital-35', 'Digital camera, 35 mm', ['full-aperture-35', 'three-perf-35', 'anamorphic-35']),
  body('film-16', '16 mm film camera', ['super-16', 'standard-16']),
  body('digital-four-thirds', 'Digital camera, micro four thirds', ['four-thirds']),
  body('film-65', '65 mm film camera', ['large-65']),
];
