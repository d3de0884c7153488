/** The names of the icons in `IconSprite`. */
export type IconName =
  | 'stand'
  | 'head'
  | 'flag'
  | 'bounce'
  | 'practical'
  | 'fence'
  | 'post'
  | 'performer'
  | 'camera'
  | 'track'
  | 'generator'
  | 'cable'
  | 'cart'
  | 'ladder'
  | 'tape'
  | 'undo'
  | 'redo'
  | 'play'
  | 'night'
  | 'link'
  | 'wall'
  | 'block'
  | 'deck'
  | 'parapet'
  | 'stairhouse'
  | 'tank'
  | 'model'
  | 'overhead'
  | 'setups'
  | 'times'
  | 'day';

/** An icon beside a word, or alone in a labelled button: it says nothing to a screen reader by itself. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="i" aria-hidden="true">
      <use href={`#i-${name}`} />
    </svg>
  );
}

const ICON_OF_KIND: Readonly<Record<string, IconName>> = {
  performer: 'performer',
  stand: 'stand',
  head: 'head',
  flag: 'flag',
  frame: 'bounce',
  bounce: 'bounce',
  practical: 'practical',
  'bulb string': 'practical',
  generator: 'generator',
  distro: 'generator',
  cable: 'cable',
  track: 'track',
  cart: 'cart',
  monitor: 'setups',
  ladder: 'ladder',
  sandbag: 'model',
  deck: 'deck',
  parapet: 'parapet',
  wall: 'wall',
  fence: 'fence',
  'stair house': 'stairhouse',
  shed: 'stairhouse',
  tank: 'tank',
  post: 'post',
  line: 'cable',
  chimney: 'block',
  box: 'model',
  pane: 'wall',
  'skyline block': 'block',
};

/** The icon of a kind of item. */
export const iconOfKind = (kind: string): IconName => ICON_OF_KIND[kind] ?? 'model';
