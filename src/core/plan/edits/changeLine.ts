import type { Line } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { takenLines } from './addLine';
import { orSame } from './motion';

/** Changes whose line it is, or which setup establishes its side; undefined leaves that to the first that frames both. */
export function changeLine(
  plan: Plan,
  args: {
    readonly lineId: string;
    readonly patch: { readonly pair?: Line['pair']; readonly establishedBy?: string | undefined };
  },
): Plan {
  const lines = plan.lines ?? [];
  const index = lines.findIndex(({ id }) => id === args.lineId);
  const before = lines[index];
  if (!before) return plan;
  const { establishedBy, ...rest } = { ...before, ...args.patch };
  const line = orSame<Line>(before, {
    ...rest,
    id: before.id,
    ...(establishedBy !== undefined && { establishedBy }),
  });
  return line === before ? plan : takenLines(plan, lines.with(index, line), line);
}
