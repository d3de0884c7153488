import type { Plan } from '../../core/plan/schema/plan';

/** The files that lie beside a plan and not in it: what a link of the plan does not carry, a sentence each. */
export function leftOutOf(plan: Plan): string[] {
  const models = plan.pieces.flatMap((piece) => (piece.kind === 'model' ? [piece.asset.name] : []));
  const sentences = [...new Set(models)].map(
    (name) => `The model “${name}” is not in the link: where it stands is. The file pack carries it.`,
  );
  if (plan.underlay)
    sentences.push(
      `The picture “${plan.underlay.asset.name}” under the overhead is not in the link. The file pack carries it.`,
    );
  return sentences;
}
