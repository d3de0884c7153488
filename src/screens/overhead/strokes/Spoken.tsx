import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import type { StrokeFigures } from '../../../desk/tools/figures';
import { EMPTY_STROKE } from '../../../desk/tools/toolStore';
import { useTool } from '../../../desk/tools/useTool';
import { pickedSentence, spokenHand } from './words';

/** Reads out what is in the hand, and where it points while the keys move it. */
export function Spoken({
  plan,
  figures,
  lengths,
}: {
  readonly plan: Plan;
  readonly figures: StrokeFigures;
  readonly lengths: LengthSystem;
}) {
  const tool = useTool((state) => state.tool);
  const stroke = useTool((state) => state.stroke) ?? EMPTY_STROKE;
  const says = stroke.byKeys
    ? spokenHand(plan, stroke, figures, lengths)
    : pickedSentence(plan, tool, lengths);
  return (
    <p className="vh" role="status" data-stroke-spoken="">
      {says}
    </p>
  );
}
