import { useEffect, useRef, useState } from 'react';
import { Field } from './Field';

/** Why a value was not taken, and what lies nearest to it that would be. */
export interface Refusal {
  readonly sentence: string;
  readonly offer: { readonly word: string; readonly take: () => void } | null;
}

/** A field that, where it refuses what was typed, has a button with the nearest value that it takes. */
export function OfferField(props: {
  readonly label: string;
  readonly text: string;
  readonly unit?: string;
  readonly wide?: boolean;
  readonly empty?: string;
  readonly commit: (text: string) => Refusal | null;
}) {
  const { label, text, commit, wide = false } = props;
  const [refused, setRefused] = useState<{ readonly text: string; readonly refusal: Refusal } | null>(null);
  const [taken, setTaken] = useState(0);
  const place = useRef<HTMLDivElement>(null);
  // The button is gone once it is pressed: whoever goes by keys is back at the field.
  useEffect(() => {
    if (taken > 0) place.current?.querySelector('input')?.focus();
  }, [taken]);
  // A value that changed elsewhere (a drag, an undo) makes an old offer pointless.
  const offer = refused?.text === text ? refused.refusal.offer : null;
  return (
    <div className={wide ? 'wide offering' : 'offering'} ref={place}>
      <Field
        key={taken}
        label={label}
        text={text}
        {...(props.unit === undefined ? {} : { unit: props.unit })}
        {...(props.empty === undefined ? {} : { empty: props.empty })}
        onGivenBack={() => setRefused(null)}
        commit={(typed) => {
          const refusal = commit(typed);
          setRefused(refusal && { text, refusal });
          return refusal?.sentence ?? null;
        }}
      />
      {offer ? (
        <button
          type="button"
          className="offer"
          onClick={() => {
            offer.take();
            setRefused(null);
            setTaken(taken + 1);
          }}
        >
          {offer.word}
        </button>
      ) : null}
    </div>
  );
}
