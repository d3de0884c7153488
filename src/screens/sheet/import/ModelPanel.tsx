import { trianglesIn } from '../../../core/form/models/heldModel';
import { setModelUp } from '../../../core/plan/edits/setModelFile';
import type { Piece } from '../../../core/plan/schema/pieces';
import { thinnedWords } from '../../../core/report/modelNotices';
import type { AssetState } from '../../../desk/assets/assetStore';
import { giveModelFile } from '../../../desk/assets/giveFile';
import { sizeWords } from '../../../desk/assets/modelWords';
import { useAsset } from '../../../desk/assets/useAsset';
import { useSession } from '../../../desk/hooks';
import { SelectField } from '../../parts/Field';
import { editPlan } from '../fields/edit';
import { putFootOnDeck } from './measuring';
import { TwoPoints } from './TwoPoints';

type Model = Extract<Piece, { kind: 'model' }>;

const counted = (count: number): string => count.toLocaleString('en-GB');

function stateWords(model: Model, state: AssetState): string {
  switch (state.status) {
    case 'model':
      return (
        thinnedWords(model, state.model) ??
        `${counted(trianglesIn(state.model))} triangles, all of them judged and drawn.`
      );
    case 'unreadable':
      return `${state.sentence} A box of its size stands for it.`;
    case 'missing':
      return `Its file, ${model.asset.name}, is not on this device: a box of its size stands for it.`;
    case 'picture':
    case 'reading':
      return `${model.asset.name} is being read. A box stands for it until then.`;
  }
}

/** An imported model: what of it is judged, how large it is, and the steps that bring it to its place. */
export function ModelPanel({ item: model }: { readonly item: Model }) {
  const lengths = useSession((state) => state.lengths);
  const state = useAsset(model.asset.sha256);
  const isAway = state.status === 'missing' || state.status === 'unreadable';
  return (
    <section className="group">
      <h4>Out of a file</h4>
      <p className="advice" role={isAway ? 'alert' : undefined}>
        {model.asset.name}, {sizeWords(model, lengths)}. {stateWords(model, state)}
      </p>
      {isAway ? (
        <p className="acts">
          <button type="button" className="do" onClick={() => void giveModelFile(model)}>
            Give it the file
          </button>
        </p>
      ) : null}
      <TwoPoints purpose={{ type: 'model', id: model.id }} model={model} />
      <div className="fields">
        <SelectField
          wide
          label="up in the file"
          value={model.up}
          onChange={(value) =>
            editPlan('say which way is up', (plan) =>
              setModelUp(plan, { id: model.id, up: value === 'z' ? 'z' : 'y' }),
            )
          }
        >
          <option value="y">y, as models have it</option>
          <option value="z">z, as surveys have it</option>
        </SelectField>
      </div>
      <p className="acts">
        <button type="button" onClick={() => putFootOnDeck(model)}>
          Put its foot on the deck
        </button>
      </p>
    </section>
  );
}
