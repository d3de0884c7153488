import { addArea } from '../../plan/edits/addArea';
import { addItem } from '../../plan/edits/addItem';
import { blackItems } from '../../plan/edits/blackItems';
import { setKey } from '../../plan/edits/changeKeys';
import { letShow } from '../../plan/edits/letShow';
import { moveItem } from '../../plan/edits/moveItem';
import { raiseItems } from '../../plan/edits/raiseItems';
import { reposeCamera } from '../../plan/edits/reposeCamera';
import { setArm } from '../../plan/edits/setArm';
import { setCheat } from '../../plan/edits/setCheat';
import { setLens } from '../../plan/edits/setLens';
import { setStandHeight } from '../../plan/edits/setStandHeight';
import { turnItem } from '../../plan/edits/turnItem';
import { turnSetup } from '../../plan/edits/turnSetup';
import type { Plan } from '../../plan/schema/plan';

/** The edits that remedies are made of, by their names. */
const EDITS = {
  addArea,
  addItem,
  blackItems,
  letShow,
  moveItem,
  raiseItems,
  reposeCamera,
  setArm,
  setCheat,
  setKey,
  setLens,
  setStandHeight,
  turnItem,
  turnSetup,
} as const;

type Edits = typeof EDITS;

/** One edit of the plan as plain data: its name and what it is told. */
export type RemedyEdit = {
  readonly [Name in keyof Edits]: { readonly edit: Name; readonly args: Parameters<Edits[Name]>[1] };
}[keyof Edits];

/** The plan with some edits, one after the other. */
export const withRemedy = (plan: Plan, { edits }: { readonly edits: readonly RemedyEdit[] }): Plan =>
  edits.reduce((now, { edit, args }) => {
    const apply: (plan: Plan, args: never) => Plan = EDITS[edit];
    return apply(now, args as never);
  }, plan);
