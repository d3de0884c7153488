import { useSession } from '../../desk/hooks';
import type { Guides } from '../../desk/sessionStore';
import { Menu } from '../parts/Menu';
import { Segmented } from '../parts/Segmented';

const GUIDES: readonly { readonly name: keyof Guides; readonly word: string }[] = [
  { name: 'lookAround', word: 'look-around dimmed' },
  { name: 'centre', word: 'centre' },
  { name: 'thirds', word: 'thirds' },
  { name: 'safe', word: 'safe areas' },
];

/** What is drawn over the picture, and how the picture is drawn. */
export function GuideMenu() {
  const guides = useSession((state) => state.guides);
  const setGuides = useSession((state) => state.setGuides);
  const quality = useSession((state) => state.pictureQuality);
  const setQuality = useSession((state) => state.setPictureQuality);
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
      <Segmented
        label="Picture"
        choices={[
          { value: 'light', word: 'light picture' },
          { value: 'full', word: 'full' },
        ]}
        chosen={quality}
        onChoose={setQuality}
      />
    </Menu>
  );
}
