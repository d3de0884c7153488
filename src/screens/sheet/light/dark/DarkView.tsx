import type { DarkVerdict, ItemReads } from '../../../../core/light/readsInTheDark';
import { blackItems } from '../../../../core/plan/edits/blackItems';
import { itemOf } from '../../../../core/plan/items';
import { named } from '../../../../core/plan/named';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { withNames } from '../../../../core/plan/withNames';
import { canBeBlacked, readsText } from '../../../../core/report/light/darkSentences';
import { goToSeconds } from '../../../../desk/choose';
import { usePlanState, useSession } from '../../../../desk/hooks';
import { useSetupLight } from '../../../../desk/lightStore';
import { sessionStore } from '../../../../desk/sessionStore';
import { ChoosableRow } from '../../ChoosableRow';
import { ProposalActs } from '../../continuity/ProposalActs';
import { Sentence } from '../../Sentence';
import { inOrder, partCells } from './darkWords';
import { Thresholds } from './Thresholds';
import { UprightFields } from './UprightFields';
import './dark.css';

const GLYPH: Readonly<Record<DarkVerdict, { readonly name: string; readonly tone: string }>> = {
  reads: { name: 'showing', tone: '' },
  'passes for an upright': { name: 'covered', tone: 'q' },
  'lost in the dark': { name: 'lost', tone: 'q' },
};

function VerdictGlyph({ verdict }: { readonly verdict: DarkVerdict }) {
  const { name, tone } = GLYPH[verdict];
  return (
    <svg className={`v ${tone}`} role="img" aria-label={verdict}>
      <use href={`#g-${name}`} />
    </svg>
  );
}

/** The parts of what is chosen, in stops: how each stands out, and what tape and a flag would leave. */
function Parts({ reads, label }: { readonly reads: ItemReads; readonly label: string }) {
  return (
    <table className="dark-parts">
      <caption className="vh">{label}, part by part, in stops</caption>
      <thead>
        <tr>
          <th scope="col">part</th>
          <th scope="col">of frame</th>
          <th scope="col">from grey</th>
          <th scope="col">from behind</th>
          <th scope="col">blacked</th>
          <th scope="col">flagged</th>
        </tr>
      </thead>
      <tbody>
        {reads.parts.map((part) => {
          const [share, ...stops] = partCells(part);
          return (
            <tr key={part.name}>
              <th scope="row">{part.name}</th>
              <td>{share}</td>
              <td>{stops[0]}</td>
              <td>{stops[1]}</td>
              <td>{stops[2]}</td>
              <td>{stops[3]}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** Black tape on gear, tried or done; or off it again. */
function Tape({
  plan,
  reads,
  label,
}: {
  readonly plan: Plan;
  readonly reads: ItemReads;
  readonly label: string;
}) {
  const gear = plan.gear.find(({ id }) => id === reads.itemId);
  if (!gear || (!gear.blacked && !canBeBlacked({ plan }, reads))) return null;
  const blacked = !gear.blacked;
  return (
    <span className="light-acts">
      <ProposalActs
        word={blacked ? 'Black tape on it' : 'Take the black tape off'}
        propose={() => ({
          name: blacked ? `black ${label}` : `take the tape off ${label}`,
          done: blacked ? `${named(label)} is under black tape.` : `${named(label)} is bare.`,
          change: (from) => blackItems(from, { ids: [gear.id], blacked }),
        })}
      />
    </span>
  );
}

function DarkRow({ plan, reads }: { readonly plan: Plan; readonly reads: ItemReads }) {
  const selectedId = useSession((state) => state.selectedId);
  const chosen = reads.itemId === selectedId;
  const told = withNames(plan);
  const label = itemOf(told, reads.itemId)?.record.label ?? reads.itemId;
  return (
    <>
      <ChoosableRow
        chosen={chosen}
        onChoose={() => {
          sessionStore.getState().setSelectedId(reads.itemId);
          goToSeconds(reads.seconds);
        }}
      >
        <VerdictGlyph verdict={reads.verdict} />
        <Sentence name={label} text={readsText({ plan: told }, reads)} colon />
      </ChoosableRow>
      {chosen ? (
        <li className="dark-more">
          <Parts reads={reads} label={label} />
          <Tape plan={plan} reads={reads} label={label} />
        </li>
      ) : null}
    </>
  );
}

/** Which of the things in frame anybody would see, why, and what would lose them. */
export function DarkView({ setup }: { readonly setup: Setup }) {
  // As it is, not as a preview of tape has it: the buttons say what is to be done.
  const plan = usePlanState((state) => state.plan);
  const light = useSetupLight(setup.id);
  const reads = inOrder(plan, light?.reads ?? []);
  return (
    <>
      {light ? null : <p className="after">The dark is being read.</p>}
      {light && reads.length === 0 ? (
        <p className="advice">Nothing that the crew brings is in this frame, so nothing has to be lost.</p>
      ) : null}
      <ul className="rows findings" aria-label="How what shows reads in the dark">
        {reads.map((each) => (
          <DarkRow key={each.itemId} plan={plan} reads={each} />
        ))}
      </ul>
      <Thresholds plan={plan} />
      <UprightFields plan={plan} />
    </>
  );
}
