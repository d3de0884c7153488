import { useRef } from 'react';
import { useSession } from '../../desk/hooks';
import type { Guides } from '../../desk/sessionStore';
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
  const menu = useRef<HTMLDetailsElement>(null);
  return (
    <details
      className="menu"
      ref={menu}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !menu.current?.open) return;
        event.stopPropagation();
        menu.current.open = false;
        menu.current.querySelector('summary')?.focus();
      }}
      onBlur={(event) => {
        const to = event.relatedTarget;
        if (menu.current && to instanceof Node && !menu.current.contains(to)) menu.current.open = false;
      }}
    >
      <summary>guides</summary>
      <div className="menu-sheet">
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
      </div>
    </details>
  );
}
