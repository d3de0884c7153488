import type { Drawing } from './drawing';

/** What is done at the desk. */
export const DESK_ICONS = {
  tape: { lines: 'M9 17h12.5v-3.2M13.5 17v-2M17.5 17v-2', rings: [[9, 10.5, 6.5]], point: [9, 10.5, 1.8] },
  undo: { lines: 'M8.5 4.5 4 9l4.5 4.5M4 9h10.5a5 5 0 0 1 0 10H11', point: [8.2, 19, 1.7] },
  redo: { lines: 'M15.5 4.5 20 9l-4.5 4.5M20 9H9.5a5 5 0 0 0 0 10H13', point: [15.8, 19, 1.7] },
  play: { lines: 'M9 5v14l11-7z', point: [4.8, 12, 1.7] },
  night: { lines: 'M15.5 3.8a8.6 8.6 0 1 0 5 11.2 7 7 0 0 1-5-11.2z', point: [19, 6, 1.6] },
  link: {
    lines: 'M3.5 3.5h7v7h-7zM13.5 3.5h7v7h-7zM3.5 13.5h7v7h-7zM13.5 13.5h3M20.5 13.5v3M13.5 17v3.5h3.5',
    point: [19, 19.5, 1.6],
  },
  overhead: { lines: 'M3.5 5.5h17v13h-17zM12 18.5 7 5.5M12 18.5l5-13', point: [12, 9.5, 1.7] },
  setups: { lines: 'M3.5 4.5h17v7h-17zM3.5 15h17M3.5 19h11', point: [12, 8, 1.7] },
  times: { lines: 'M2.5 16.5h19M5.5 16.5a6.5 6.5 0 0 1 13 0M6 20.5h12M12 3.5V7', point: [18.5, 6.5, 1.7] },
  day: {
    lines:
      'M12 1.5v3M12 19.5v3M1.5 12h3M19.5 12h3M4.6 4.6l2.1 2.1M17.3 17.3l2.1 2.1M4.6 19.4l2.1-2.1M17.3 6.7l2.1-2.1',
    rings: [[12, 12, 4.6]],
    point: [12, 12, 1.7],
  },
  photo: { lines: 'M3.5 5.5h17v13h-17zM3.5 16.5 9 11l4 4 3-2.5 4.5 4', point: [15.5, 9.3, 1.6] },
  lock: { lines: 'M5.5 10.5h13v10h-13zM8.5 10.5V7a3.5 3.5 0 0 1 7 0v3.5', point: [12, 15.5, 1.7] },
  unlock: { lines: 'M5.5 10.5h13v10h-13zM8.5 10.5V6a3.5 3.5 0 0 1 7 0v.8', point: [12, 15.5, 1.7] },
  eye: {
    lines: 'M2.5 12c2.8-4.7 6-7 9.5-7s6.7 2.3 9.5 7c-2.8 4.7-6 7-9.5 7s-6.7-2.3-9.5-7z',
    point: [12, 12, 2.6],
  },
  hidden: {
    lines:
      'M2.5 9c2.8 4.7 6 7 9.5 7s6.7-2.3 9.5-7M5.3 12.7l-2.3 3M18.7 12.7l2.3 3M9 15.5l-1 3.7M15 15.5l1 3.7',
    point: [12, 20.2, 1.6],
  },
  group: {
    lines: 'M3.5 7.5v-4h4M16.5 3.5h4v4M20.5 16.5v4h-4M7.5 20.5h-4v-4M7.5 7.5h5.5v5.5H7.5z',
    point: [15.8, 15.8, 1.8],
  },
  find: { lines: 'M15 15l6 6', rings: [[10, 10, 6.5]], point: [10, 10, 1.7] },
} as const satisfies Readonly<Record<string, Drawing>>;
