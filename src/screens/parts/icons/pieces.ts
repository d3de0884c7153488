import type { Drawing } from './drawing';

/** Set pieces, and what is cut into them. */
export const PIECE_ICONS = {
  deck: { lines: 'M3 16.5 8 6.5h13l-5 10zM5.5 11.5h13M12.3 16.5l5-10', point: [7.5, 20.5, 1.6] },
  parapet: { lines: 'M3.5 9.5v11h17v-11zM2 9.5V6.5h20v3zM7 20.5l7-11M13 20.5l7-11', point: [12, 3.4, 1.6] },
  wall: {
    lines: 'M3.5 6.5h17v11h-17zM3.5 12h17M9 6.5V12M15 6.5V12M6.5 12v5.5M17.5 12v5.5',
    point: [12, 14.8, 1.5],
  },
  fence: {
    lines:
      'M3.5 3.5v17M20.5 3.5v17M3.5 6h17M3.5 18h17M3.5 12l6-6M6 18 18 6M14.5 18l6-6M3.5 12l6 6M6 6l12 12M14.5 6l6 6',
    point: [12, 12, 1.8],
  },
  stairhouse: { lines: 'M3.5 20.5V6.5l11-2.5v16.5zM6.5 20.5v-9h5v9M14.5 20.5h6', point: [18.5, 8, 1.7] },
  tank: {
    lines: 'M5.5 4.5h13v9h-13zM9.8 4.5v9M14.2 4.5v9M7.5 13.5v7M16.5 13.5v7M7.5 20.5l9-7',
    point: [12, 2.2, 1.5],
  },
  post: { lines: 'M5 5.5h14M12 5.5v15M8.5 20.5h7M17.5 5.5v4', point: [17.5, 11, 1.7] },
  block: { lines: 'M3.5 20.5v-9h5v-7h7v10h5v6M11 8h2M11 11.5h2', point: [18, 17.5, 1.5] },
  model: { lines: 'M12 8v7.5m-3.5-3.5L12 15.5l3.5-3.5M4 12.5v8h16v-8', point: [12, 4.5, 1.7] },
  hole: { lines: 'M2.5 17.5 8 6.5h14l-5.5 11zM8.3 14.5l2.6-5h5.3l-2.6 5z', point: [18, 20.8, 1.6] },
  'wet-area': {
    lines: 'M3 16.5 8 6.5h13l-5 10zM8 13.2c1-1 2-1 3 0s2 1 3 0M10 9.8c1-1 2-1 3 0s2 1 3 0',
    point: [19, 20.5, 1.6],
  },
  'dry-area': { lines: 'M3 16.5 8 6.5h13l-5 10zM8.5 14l2.2-4.5h5L13.5 14z', point: [5, 20.5, 1.6] },
  opening: { lines: 'M2.5 4.5h5v15h-5zM16.5 4.5h5v15h-5zM7.5 19.5l7.5-7.5', point: [12, 7.5, 1.7] },
  shed: {
    lines: 'M3.5 20.5v-10L12 4l8.5 6.5v10zM3.5 10.5h17M8 10.5v10M16 10.5v10M8 15.5h8',
    point: [12, 7.9, 1.4],
  },
  loft: {
    lines: 'M2.5 6.5l19-3M4.5 6.3v14.2h15V4M4.5 13.5h15M9 13.5l5 7M14 13.5l-5 7',
    point: [12, 9.8, 1.7],
  },
  line: { lines: 'M3.5 3.5v17M20.5 3.5v17M3.5 6c5 3 12 3 17 0M7.5 7.7v6.8h5V8.2', point: [16.5, 10.6, 1.6] },
  chimney: { lines: 'M5.5 20.5v-11h13v11zM4 9.5V7h16v2.5M8 7V3h3v4M14.5 7V4.5h2', point: [12, 15, 1.7] },
  box: {
    lines: 'M3.5 8 12 3.5 20.5 8v9L12 21.5 3.5 17zM3.5 8 12 12.5 20.5 8M12 12.5v9',
    point: [7.8, 14.8, 1.6],
  },
  riser: {
    lines: 'M2.5 9.5h19v3h-19zM4.5 12.5v8M19.5 12.5v8M4.5 20.5l15-8M2.5 20.5h4M17.5 20.5h4',
    point: [12, 6, 1.7],
  },
  pane: { lines: 'M5.5 3.5h13v17h-13zM8.5 11.5l4.5-5M8.5 16.5l7-8', point: [14.8, 16.2, 1.7] },
  chart: {
    lines:
      'M3.5 3.5h17v11h-17zM3.5 9h17M9.2 3.5v11M14.8 3.5v11M12 14.5v6M8.5 20.5h7M3.5 9l5.7-5.5M9.2 14.5l5.6-5.5M14.8 9l5.7-5.5',
    point: [6.3, 11.8, 1.6],
  },
  mirror: {
    lines:
      'M15.5 2.5v19M15.5 6l4-3.5M15.5 11l4-3.5M15.5 16l4-3.5M15.5 21l4-3.5M3.5 4.5l12 7.5-12 7.5M7.5 19.2l-4 .3 1.4-3.7',
    point: [15.5, 12, 1.8],
  },
  'timber-screen': {
    lines: 'M3.5 4.5h17v15h-17zM7.8 4.5v15M12 4.5v4.5M12 14v5.5M16.2 4.5v15',
    point: [12, 11.5, 1.6],
  },
  railing: { lines: 'M3.5 20.5v-13M20.5 20.5v-13M2 7.5h20M3.5 13.5h17M12 7.5v13', point: [12, 4, 1.6] },
  crate: { lines: 'M4.5 5.5h15v14h-15zM4.5 9.5h15M4.5 15.5h15', point: [12, 12.5, 1.6] },
  table: { lines: 'M2.5 9.5h19v2.5h-19zM5 12v8.5M19 12v8.5', point: [15.5, 6.6, 1.7] },
  'washing-post': {
    lines: 'M3.5 5.5h17M12 5.5v15M8.5 20.5h7M4.5 5.5v3.5M8 5.5v3.5M16 5.5v3.5M19.5 5.5v3.5',
    point: [12, 2.6, 1.6],
  },
  wire: {
    lines: 'M4.5 2.5v18.5M19.5 2.5v18.5M2 21h5M17 21h5M4.5 5c4 5 11 5 15 0M4.5 10.5c4 5 11 5 15 0',
    point: [12, 14.2, 1.6],
  },
} as const satisfies Readonly<Record<string, Drawing>>;
