import { useLivePlan, useSession } from '../../../desk/hooks';
import { saveCrewFile } from '../../../desk/pack/savingPack';
import { MakeButton, Progress, useIsMaking } from '../night/pack/Making';

/** Saves the crew sheet as one file that opens by itself, for who has no signal and no link. */
export function CrewFiles() {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const isMaking = useIsMaking('crew sheet');
  return (
    <>
      <div className="pack-acts">
        <span role="status">{isMaking ? 'Making the crew sheet' : ''}</span>
        {isMaking ? <Progress kind="crew sheet" /> : null}
        <MakeButton
          kind="crew sheet"
          word="Save the crew sheet as one file"
          onMake={() => void saveCrewFile(plan, lengths)}
        />
      </div>
      <p className="advice">
        One HTML file with the pictures in it, for chats and mails that cut links: it opens on any phone,
        needs no signal, and this page opens the plan out of it again.
      </p>
    </>
  );
}
