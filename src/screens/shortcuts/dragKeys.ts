/** A thing that a hand drags, and the keys that do the same. */
export interface DragKeys {
  readonly what: string;
  readonly keys: readonly string[];
  readonly word: string;
}

/**
 * For the key sheet: how everything that can be dragged is moved without a pointer. Tab comes to all of it; the arrows move
 * what has the focus, Shift farther, Alt less.
 */
export const DRAG_KEYS: readonly DragKeys[] = [
  {
    what: 'things, cameras, wet areas',
    keys: ['Enter', 'Arrows'],
    word: 'choose it on the roof; nudge it',
  },
  {
    what: 'their handles',
    keys: ['Enter', 'Tab', 'Arrows'],
    word: 'a second Enter goes to them; Tab from one to the next; move it. Enter types its figure, Delete takes a corner out',
  },
  {
    what: 'marks, points of a way',
    keys: ['Arrows'],
    word: 'handles of who stands there',
  },
  {
    what: 'corners of outlines, runs and wet areas',
    keys: ['Arrows'],
    word: 'handles; the small rings between them put one in',
  },
  {
    what: 'aim of a lamp, arms, flags, ends of a track, doors',
    keys: ['Arrows'],
    word: 'handles; a ring turns what is chosen, or pans the camera',
  },
  {
    what: 'meters, ways out',
    keys: ['Arrows', 'Delete'],
    word: 'move it; take it away',
  },
  {
    what: 'the cross that reads a place',
    keys: ['Arrows', 'Shift Arrows'],
    word: 'move it a little; farther',
  },
  {
    what: 'the far end of a row',
    keys: ['Tab'],
    word: 'the fields of its form: how many, how far apart, which way',
  },
  {
    what: 'keys of a move, under the picture',
    keys: ['\u2190 \u2192', 'Shift \u2190 \u2192'],
    word: 'a frame; a second',
  },
  {
    what: 'somebody held in frame',
    keys: ['Arrows', 'Shift Arrows'],
    word: 'the cross in the picture by 1\u00a0%; by 10\u00a0%',
  },
  {
    what: 'frame lines of your own',
    keys: ['Tab'],
    word: 'their fields in the camera’s panel',
  },
  {
    what: 'all on the timeline',
    keys: ['\u2190 \u2192', 'Shift \u2190 \u2192', 'Page keys'],
    word: 'a frame; a second; from beat to beat. Enter opens it, Delete takes it out',
  },
  {
    what: 'the order of the night',
    keys: ['Alt \u2191 \u2193'],
    word: 'the setup that has the focus, earlier or later',
  },
  {
    what: 'out of the palette',
    keys: ['Enter', 'Arrows'],
    word: 'take it into the hand; point. Enter once more sets it down',
  },
];
