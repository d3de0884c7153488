import type { Level } from '../../../../core/light/levels';
import { itemOf } from '../../../../core/plan/items';
import type { Plan } from '../../../../core/plan/schema/plan';
import { withNames } from '../../../../core/plan/withNames';
import type { FaceNow } from '../../../../core/report/light/lightNow';
import { formatLight, lightUnitOf } from '../../../../core/units/illuminance';
import { useSession } from '../../../../desk/hooks';
import { useLight } from '../../../../desk/lightStore';
import type { InstantLight } from '../../../../desk/workers/reportApi';
import { choosePerformer, useLitFace } from '../litFace';
import { Told } from '../Told';
import { saidBy } from '../view';
import { keyFromText, ratioText, stopsNumber } from '../words';
import { giversText } from './giversText';
import { StopsBar } from './StopsBar';
import { Summary } from './Summary';

function LevelRow({ word, level }: { readonly word: string; readonly level: Level | null }) {
  const lengths = useSession((state) => state.lengths);
  return (
    <tr className="level-row">
      <th scope="row">{word}</th>
      <td>{level ? formatLight(level.lux, lightUnitOf(lengths)) : 'none'}</td>
      <td>{level && level.stops !== null ? <StopsBar stops={level.stops} /> : null}</td>
      <td className="stops">{stopsNumber(level?.stops ?? null)}</td>
    </tr>
  );
}

function FaceRows(props: {
  readonly plan: Plan;
  readonly now: InstantLight;
  readonly face: FaceNow;
  readonly chosen: boolean;
}) {
  const { plan, now, face, chosen } = props;
  const lengths = useSession((state) => state.lengths);
  const hasSetup = plan.setups.length > 0;
  return (
    <tbody aria-current={chosen ? 'true' : undefined}>
      <tr className="who">
        <th scope="rowgroup" colSpan={4}>
          <button type="button" onClick={() => choosePerformer(face.performerId)}>
            <b>{itemOf(plan, face.performerId)?.record.label}</b>
            <span className="q">{keyFromText(face, hasSetup)}</span>
            <span className="big">{ratioText(face.ratio)}</span>
          </button>
        </th>
      </tr>
      <LevelRow word="key" level={face.key} />
      <LevelRow word="fill" level={face.fill} />
      <LevelRow word="back" level={face.back} />
      <tr className="givers">
        <td colSpan={4}>{giversText(plan, face, now, lengths)}</td>
      </tr>
    </tbody>
  );
}

/** Who is lit how at the playhead: key, fill and back of every face against the set stop. */
export function FacesView({ plan }: { readonly plan: Plan }) {
  const now = useLight((state) => state.now);
  const lit = useLitFace(plan);
  if (plan.cast.length === 0)
    return (
      <p className="advice">
        Nobody is cast yet. Put a performer on the roof, and the light on their face is read here.
      </p>
    );
  if (!now) return <p className="after">The light is being read.</p>;
  if (now.faces.length === 0)
    return <p className="advice">Nobody has a mark yet. Give one to a performer on the Blocking sheet.</p>;
  return (
    <>
      <table className="face-levels">
        <caption className="vh">Levels at each face, against the set stop</caption>
        {now.faces.map((face) => (
          <FaceRows
            key={face.performerId}
            plan={withNames(plan)}
            now={now}
            face={face}
            chosen={face.performerId === lit?.performerId}
          />
        ))}
      </table>
      <Summary plan={withNames(plan)} />
      <Told heading="Over the whole setup" about={saidBy('faces')} />
    </>
  );
}
