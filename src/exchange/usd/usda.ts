import { lampsAt } from '../../core/form/lamps';
import { formsThrough } from '../../core/optics/riding';
import type { Plan } from '../../core/plan/schema/plan';
import { CODES_PER_SECOND, cameraLines, codeRange, refuseTooMany } from './cameras';
import { lampLines } from './lamps';
import { UsdMaterials } from './materials';
import { itemLines } from './meshes';
import { Identifiers, metadata, numberText, prim, quoted } from './text';

const ROOT = 'Roof';

/**
 * The plan at one instant as a USD stage in text, the same geometry as the binary glTF: y up, in centimetres, so that
 * millimetres of lens and gate are millimetres in it. Items, each a prim with a mesh for each part, materials, lamps and
 * cameras; cameras go on over their setups' spans at 24 time codes a second of the action's clock. What the format has
 * no word for is under `standclear` in the custom data. The same plan and instant give the same bytes everywhere.
 * @param seconds on the action's clock, finite
 * @throws an error for cameras that move for longer than a stage holds
 */
export function planToUsda(plan: Plan, seconds: number): Uint8Array<ArrayBuffer> {
  if (!Number.isFinite(seconds))
    throw new Error(`planToUsda: found ${seconds} seconds, expected a finite number`);
  refuseTooMany(plan);
  const materials = new UsdMaterials(`/${ROOT}/Materials`);
  const items = new Identifiers();
  const cameras = new Identifiers();
  const lamps = new Identifiers();
  const scopes = {
    Items: formsThrough(plan, null, seconds).flatMap((form) => itemLines(items.of(form.id), form, materials)),
    Cameras: plan.setups.flatMap((setup) => cameraLines(cameras.of(setup.id), plan, setup, seconds)),
    Lamps: lampsAt(plan, seconds).flatMap((lamp) => lampLines(lamps.of(lamp.itemId), plan, lamp)),
    Materials: materials.lines(),
  };
  const [first, last] = codeRange(plan, seconds);
  const lines = [
    '#usda 1.0',
    '(',
    '    customLayerData = {',
    '        string creator = "Standclear"',
    `        string title = ${quoted(plan.title)}`,
    `        double seconds = ${seconds}`,
    '    }',
    `    defaultPrim = "${ROOT}"`,
    `    startTimeCode = ${numberText(first)}`,
    `    endTimeCode = ${numberText(last)}`,
    `    framesPerSecond = ${CODES_PER_SECOND}`,
    `    timeCodesPerSecond = ${CODES_PER_SECOND}`,
    '    metersPerUnit = 0.01',
    '    upAxis = "Y"',
    ')',
    '',
    ...prim(
      `Xform "${ROOT}"`,
      ['kind = "assembly"', ...metadata(plan.title, {})],
      Object.entries(scopes).flatMap(([name, body]) => prim(`Scope "${name}"`, [], body)),
    ),
    '',
  ];
  return new TextEncoder().encode(lines.join('\n'));
}
