const WAYS = { back: 'M14.5 4.5 7 12l7.5 7.5', on: 'M9.5 4.5 17 12l-7.5 7.5' } as const;

/** An arrow to what comes before or after; it says nothing to a screen reader by itself. */
export function Arrow({ to }: { readonly to: keyof typeof WAYS }) {
  return (
    <svg className="i" viewBox="0 0 24 24" aria-hidden="true">
      <path d={WAYS[to]} />
    </svg>
  );
}
