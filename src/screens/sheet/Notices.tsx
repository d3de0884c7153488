import { useReports } from '../../desk/hooks';

/** What a person should know before trusting the findings; above them, since it can make them pointless. */
export function Notices() {
  const notices = useReports((state) => state.night?.notices ?? null);
  if (!notices || notices.length === 0) return null;
  return (
    <section className="notices" aria-label="Before the findings">
      <h3>Before the findings</h3>
      <ul>
        {notices.map((notice) => (
          <li key={`${notice.where} ${notice.sentence}`}>{notice.sentence}</li>
        ))}
      </ul>
    </section>
  );
}
