import { useCrewReading } from '../../../desk/crew/useCrew';
import './page.css';

/** Stands where something is still being worked out, or says why it does not come. */
export function Waiting({ what }: { readonly what: string }) {
  const trouble = useCrewReading((state) => state.trouble);
  return (
    <p className={trouble === '' ? 'crew-waiting' : 'crew-waiting verm'} role="status">
      {trouble === '' ? what : trouble}
    </p>
  );
}
