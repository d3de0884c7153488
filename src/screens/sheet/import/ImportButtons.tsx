import { chooseModelFile } from '../../../desk/assets/importModel';
import { choosePhotoFile } from '../../../desk/assets/importPhoto';

/** What comes onto the roof out of a file, after all that can be built on it. */
export function ImportButtons() {
  return (
    <section className="group">
      <h4>Out of a file</h4>
      <p className="advice">
        A scan or a model as a .glb, or a photo or drawing to lie under the roof. Drop the file anywhere, too.
      </p>
      <p className="acts">
        <button type="button" onClick={() => void chooseModelFile()}>
          Import a model
        </button>
        <button type="button" onClick={() => void choosePhotoFile()}>
          Lay a picture
        </button>
      </p>
    </section>
  );
}
