import { useState } from 'react';
import { DELIVERIES, deliveryWord, readAspect } from '../../../core/optics/deliveries';
import { changeSetup } from '../../../core/plan/edits/changeSetup';
import { SETUP_LIMITS, type Setup } from '../../../core/plan/schema/setup';
import { SelectField } from '../../parts/Field';
import { OfferField } from '../../parts/OfferField';
import { edit } from './editing';
import { numberWord } from './legal';

const OWN = 'own';
const NONE = 'none';
const [LOWEST, HIGHEST] = SETUP_LIMITS.delivery;

const known = (aspect: number): number | null =>
  DELIVERIES.find((delivery) => deliveryWord(aspect) === delivery.word)?.aspect ?? null;

function AspectField(props: {
  readonly label: string;
  readonly aspect: number | null;
  /** Whether there may be none. */
  readonly optional?: boolean;
  readonly take: (aspect: number | undefined) => string | null;
}) {
  const { label, aspect, optional = false, take } = props;
  const [typing, setTyping] = useState(false);
  const isOwn = typing || (aspect !== null && known(aspect) === null);
  const value = isOwn ? OWN : aspect === null ? NONE : String(known(aspect));
  return (
    <>
      <SelectField
        label={label}
        value={value}
        onChange={(chosen) => {
          setTyping(chosen === OWN);
          if (chosen === NONE) take(undefined);
          else if (chosen !== OWN) take(Number(chosen));
        }}
      >
        {optional ? <option value={NONE}>none</option> : null}
        {DELIVERIES.map((delivery) => (
          <option key={delivery.word} value={delivery.aspect}>
            {delivery.word}
          </option>
        ))}
        <option value={OWN}>own ratio</option>
      </SelectField>
      {isOwn ? (
        <OfferField
          label={`${label}, ratio`}
          text={aspect === null ? '' : deliveryWord(aspect)}
          commit={(text) => {
            const read = readAspect(text);
            const range = `Ratios run from ${LOWEST} to ${HIGHEST}, width over height: 2.39 or 9:16.`;
            if (read === null) return { sentence: range, offer: null };
            if (read >= LOWEST && read <= HIGHEST) {
              const sentence = take(read);
              return sentence === null ? null : { sentence, offer: null };
            }
            const nearest = Math.min(HIGHEST, Math.max(LOWEST, read));
            return {
              sentence: range,
              offer: { word: `Take ${numberWord(nearest)}`, take: () => void take(nearest) },
            };
          }}
        />
      ) : null}
    </>
  );
}

/** What goes out of a setup's gate: the delivery, and a second one that is taken out of the first. */
export function DeliveryFields({ setup }: { readonly setup: Setup }) {
  const setupId = setup.id;
  return (
    <>
      <AspectField
        label="delivery"
        aspect={setup.delivery}
        take={(delivery) =>
          edit('change the delivery', (plan) =>
            delivery === undefined ? plan : changeSetup(plan, { setupId, patch: { delivery } }),
          )
        }
      />
      <AspectField
        optional
        label="second"
        aspect={setup.secondDelivery ?? null}
        take={(secondDelivery) =>
          edit('change the second delivery', (plan) =>
            changeSetup(plan, { setupId, patch: { secondDelivery } }),
          )
        }
      />
    </>
  );
}
