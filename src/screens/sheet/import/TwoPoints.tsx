import { bearingOf, metresBetween } from '../../../core/plan/runs';
import type { Piece } from '../../../core/plan/schema/pieces';
import { usePlanState } from '../../../desk/hooks';
import { sessionStore } from '../../../desk/sessionStore';
import { pickTool, putDown } from '../../../desk/tools/drawing';
import type { Scaled } from '../../../desk/tools/toolStore';
import { useTool } from '../../../desk/tools/useTool';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { putPlaceOnDeck, scaleTo, turnTo } from './measuring';

type Model = Extract<Piece, { kind: 'model' }>;

const isSame = (a: Scaled, b: Scaled): boolean =>
  a.type === b.type && (a.type === 'underlay' || b.type === 'underlay' || a.id === b.id);

/**
 * Two places pressed on the roof and what is known of them: how far they are apart, which way one lies from the other
 * and, on a model, that the first lies on the deck.
 */
export function TwoPoints({ purpose, model }: { readonly purpose: Scaled; readonly model: Model | null }) {
  const picked = useTool(({ tool }) => tool.type === 'two points' && isSame(tool.purpose, purpose));
  const asked = useTool(({ asksDistance }) => asksDistance);
  const first = useTool(({ stroke }) => (stroke?.corners.length ?? 0) > 0);
  const north = usePlanState(({ plan }) => plan.place.northDegrees);
  if (!picked) {
    return (
      <p className="acts">
        <button
          type="button"
          onClick={() => {
            sessionStore.getState().setRoofView('overhead');
            pickTool({ type: 'two points', purpose });
          }}
        >
          Press two points
        </button>
      </p>
    );
  }
  if (!asked || !isSame(asked.purpose, purpose)) {
    return (
      <>
        <p className="advice">
          {first
            ? 'Press the second place on the overhead.'
            : 'Press two places on the overhead that you know the distance of.'}{' '}
          <kbd>Esc</kbd> puts it down.
        </p>
        <p className="acts">
          <button type="button" className="bare" onClick={putDown}>
            Put it down again
          </button>
        </p>
      </>
    );
  }
  return (
    <>
      <div className="fields">
        <LengthField
          label="apart"
          metres={metresBetween(asked.from, asked.to)}
          commit={(metres) => scaleTo(asked, metres)}
        />
        <HeadingField
          label="runs at"
          degrees={bearingOf(asked.from, asked.to)}
          commit={(degrees) => turnTo(asked, degrees)}
        />
      </div>
      <p className="acts">
        <button type="button" onClick={() => turnTo(asked, north)}>
          The second lies north
        </button>
        {model ? (
          <button type="button" onClick={() => putPlaceOnDeck(model, asked.from)}>
            The first lies on the deck
          </button>
        ) : null}
        <button type="button" className="bare" onClick={putDown}>
          Done
        </button>
      </p>
    </>
  );
}
