import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useLive, useLivePlan } from '../../../desk/hooks';
import { followLight } from '../../../desk/light/asking';
import { useLight } from '../../../desk/lightStore';
import { Column } from '../../parts/Column';
import { Segmented } from '../../parts/Segmented';
import { useChosenSetup } from '../../report/useChosenSetup';
import { endPreviews } from '../previewing';
import { DarkView } from './dark/DarkView';
import { ExposureView } from './exposure/ExposureView';
import { FacesView } from './faces/FacesView';
import { FloorView } from './floor/FloorView';
import { LampList } from './lamps/LampList';
import { useFollowChosen } from './litFace';
import { Told } from './Told';
import { LIGHT_VIEWS, type LightView, lightViewStore, notSaidBy } from './view';
import { beatText, exposureText } from './words';
import './light.css';
import './lamps.css';
import './ways.css';

const VIEWS = LIGHT_VIEWS.map((value) => ({ value, word: value }));

/** In the tabs' line: the beat that the clock is in, and how the chosen setup is exposed. */
export function LightHead() {
  const plan = useLivePlan();
  const setup = useChosenSetup();
  // The text alone: it changes at beats, the clock sixty times a second.
  const beat = useLive(({ seconds }) => beatText(plan, seconds));
  return (
    <div className="light-head">
      <span className="q" title={beat}>
        {beat}
      </span>
      {setup ? <span title={exposureText(setup)}>{exposureText(setup)}</span> : null}
    </div>
  );
}

function Left({ view }: { readonly view: LightView }) {
  const plan = useLivePlan();
  const setup = useChosenSetup();
  if (view === 'faces') return <FacesView plan={plan} />;
  if (!setup)
    return (
      <p className="advice">
        No setup yet. Place a camera on the roof, and its exposure, its floor and its dark are read here.
      </p>
    );
  if (view === 'exposure') return <ExposureView plan={plan} setup={setup} />;
  return view === 'floor' ? <FloorView plan={plan} setup={setup} /> : <DarkView setup={setup} />;
}

/** The light of the night: at the left what falls on faces, film and floor, at the right what gives it. */
export function LightSheet() {
  const plan = useLivePlan();
  const view = useStore(lightViewStore, (state) => state.view);
  const trouble = useLight((state) => state.trouble);
  useFollowChosen(plan);
  useEffect(followLight, []);
  useEffect(() => endPreviews, []);
  return (
    <div className="two light-sheet">
      <Column>
        <div className="column-head stays">
          <Segmented
            label="What the light is looked at for"
            choices={VIEWS}
            chosen={view}
            onChoose={(chosen) => {
              endPreviews();
              lightViewStore.setState({ view: chosen });
            }}
          />
        </div>
        {trouble === null ? null : (
          <p className="err" role="alert">
            {trouble}
          </p>
        )}
        <Left view={view} />
        <Told heading="Will not do as it stands" about={notSaidBy(view)} onlyBreaks />
      </Column>
      <Column>
        <LampList plan={plan} />
      </Column>
    </div>
  );
}
