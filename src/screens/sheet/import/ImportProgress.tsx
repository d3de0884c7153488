import { useImporting } from '../../../desk/assets/useAsset';
import './importProgress.css';

/** A file that is being taken in: how far it is, and a way to stop it. */
export function ImportProgress() {
  const importing = useImporting();
  if (!importing) return null;
  const { name, share, stop } = importing;
  return (
    <div className="importing">
      <label>
        <span>{name} is being read</span>
        <progress max={1} value={share} />
      </label>
      <button type="button" className="bare" onClick={stop}>
        Stop
      </button>
    </div>
  );
}
