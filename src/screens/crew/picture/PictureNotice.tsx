import { useStore } from 'zustand';
import { pictureStore, tryPicturesAgain } from '../../../desk/crew/pictures/pictureStore';
import './picture.css';

/** Says once for all pictures of the page why there are none, with another try; and for the reader how far they are. */
export function PictureNotice() {
  const refused = useStore(pictureStore, (state) => state.refused);
  const asked = useStore(pictureStore, (state) => state.asked);
  const isDone = useStore(pictureStore, (state) => state.done === state.asked);
  if (asked === 0) return null;
  if (refused === null) {
    const pictures = asked === 1 ? 'picture' : 'pictures';
    return (
      <p className="vh" role="status">
        {isDone ? `${asked} ${pictures} drawn` : `Drawing ${asked} ${pictures}`}
      </p>
    );
  }
  return (
    <div className="crew-no-pictures" role="status">
      <p>{refused}</p>
      <button type="button" onClick={tryPicturesAgain}>
        Try again
      </button>
    </div>
  );
}
