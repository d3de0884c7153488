import { useStore } from 'zustand';
import { glassOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { useSession } from '../../desk/hooks';
import { levelMapStore } from '../../desk/levelMap/levelMapStore';
import type { PictureShows } from '../../desk/pictureShows';
import type { Guides } from '../../desk/sessionStore';
import { Menu } from '../parts/Menu';
import { Segmented } from '../parts/Segmented';

type Switched = {
  readonly [Name in keyof Guides]: Guides[Name] extends boolean ? Name : never;
}[keyof Guides];

const GUIDES: readonly { readonly name: Switched; readonly word: string }[] = [
  { name: 'centre', word: 'centre' },
  { name: 'thirds', word: 'thirds' },
  { name: 'safe', word: 'safe areas' },
  { name: 'second', word: 'second delivery' },
  { name: 'own', word: 'own lines' },
  { name: 'circle', word: 'image circle' },
];

const SHOWS: readonly { readonly name: keyof PictureShows; readonly word: string }[] = [
  { name: 'blur', word: 'out-of-focus blur' },
  { name: 'streaks', word: 'streaks of a squeezed lens' },
  { name: 'filter', word: 'the filter' },
  { name: 'grain', word: 'noise by ISO' },
];
/** These take a card that draws the full picture. */
const ONLY_FULL: ReadonlySet<keyof PictureShows> = new Set(['blur', 'streaks', 'grain']);

/** What is drawn over the picture, and how the picture is drawn. */
export function GuideMenu({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const guides = useSession((state) => state.guides);
  const overFrame = useStore(levelMapStore, (state) => state.overFrame);
  const setGuides = useSession((state) => state.setGuides);
  const quality = useSession((state) => state.pictureQuality);
  const setQuality = useSession((state) => state.setPictureQuality);
  const shows = useSession((state) => state.pictureShows);
  const setShows = useSession((state) => state.setPictureShows);
  const squeezed = useSession((state) => state.squeezed);
  const setSqueezed = useSession((state) => state.setSqueezed);
  return (
    <Menu word="guides">
      {GUIDES.map(({ name, word }) => (
        <label key={name}>
          <input
            type="checkbox"
            checked={guides[name]}
            onChange={(event) => setGuides({ [name]: event.currentTarget.checked })}
          />
          {word}
        </label>
      ))}
      <label>
        <input
          type="checkbox"
          checked={overFrame}
          onChange={(event) => levelMapStore.setState({ overFrame: event.currentTarget.checked })}
        />
        levels, stops from middle grey
      </label>
      <Segmented
        label="Mask outside the frame"
        choices={[
          { value: 'none', word: 'no mask' },
          { value: 'light', word: 'light' },
          { value: 'dark', word: 'dark' },
        ]}
        chosen={guides.mask}
        onChoose={(mask) => setGuides({ mask })}
      />
      {setup.secondDelivery === undefined ? null : (
        <Segmented
          label="What the mask leaves free"
          choices={[
            { value: 'delivery', word: 'around the delivery' },
            { value: 'second', word: 'the second' },
          ]}
          chosen={guides.masked}
          onChoose={(masked) => setGuides({ masked })}
        />
      )}
      {glassOf(plan, setup).lens.squeeze === 1 ? null : (
        <Segmented
          label="Squeeze"
          choices={[
            { value: 'delivered', word: 'as delivered' },
            { value: 'sensor', word: 'as on the sensor' },
          ]}
          chosen={squeezed ? 'sensor' : 'delivered'}
          onChoose={(view) => setSqueezed(view === 'sensor')}
        />
      )}
      <Segmented
        label="Picture"
        choices={[
          { value: 'light', word: 'light picture' },
          { value: 'full', word: 'full' },
        ]}
        chosen={quality}
        onChoose={setQuality}
      />
      <fieldset className="picture-shows">
        <legend>The picture shows</legend>
        {SHOWS.map(({ name, word }) => (
          <label key={name}>
            <input
              type="checkbox"
              checked={shows[name]}
              disabled={quality === 'light' && ONLY_FULL.has(name)}
              onChange={(event) => setShows({ [name]: event.currentTarget.checked })}
            />
            {word}
          </label>
        ))}
        {quality === 'light' ? <p className="q">The light picture has no blur, streaks or noise.</p> : null}
      </fieldset>
    </Menu>
  );
}
