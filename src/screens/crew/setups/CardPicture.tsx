import type { Setup } from '../../../core/plan/schema/setup';
import { coming } from '../parts/coming/coming';

/** What draws comes after what is read. */
const SetupPicture = coming<{ readonly setupId: string; readonly aspect: number }>(
  async () => (await import('../picture/SetupPicture')).SetupPicture,
  {
    meanwhile: ({ aspect }) => <div className="crew-picture" style={{ aspectRatio: aspect }} />,
    // One sentence for all of them stands above the list.
    instead: (_, { aspect }) => (
      <div className="crew-picture" style={{ aspectRatio: aspect }}>
        <p>No picture</p>
      </div>
    ),
  },
);

/** A setup's picture, whose place is there from the beginning. */
export function CardPicture({ setup }: { readonly setup: Setup }) {
  return <SetupPicture setupId={setup.id} aspect={setup.delivery} />;
}
