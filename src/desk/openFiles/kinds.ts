/** An open file that a plan can go out as. */
export interface OpenFile {
  readonly what: 'glb' | 'usdz' | 'fdl' | 'ics' | 'csv' | 'plan' | 'pack';
  /** On its button. */
  readonly act: string;
  /** What it is for, one sentence. */
  readonly use: string;
  /** Behind the plan's name. */
  readonly ending: string;
  readonly type: string;
}

/** In the order in which they are offered: for pictures, for cameras, for the office, for somebody else's desk. */
export const OPEN_FILES: readonly OpenFile[] = [
  {
    what: 'usdz',
    act: 'Save USD',
    use: 'For 3D scenes: the roof at the playhead, its lamps, the cameras with their moves.',
    ending: '.usdz',
    type: 'model/vnd.usdz+zip',
  },
  {
    what: 'glb',
    act: 'Save GLB',
    use: 'For viewers and web pages: the roof at the playhead.',
    ending: '.glb',
    type: 'model/gltf-binary',
  },
  {
    what: 'fdl',
    act: 'Save frame lines',
    use: 'For cameras and the lab: gate, squeeze and frame lines of every setup (ASC FDL).',
    ending: '.fdl',
    type: 'application/json',
  },
  {
    what: 'ics',
    act: 'Save the calendar',
    use: 'For calendars: call, setups, meal and wrap.',
    ending: '-night.ics',
    type: 'text/calendar',
  },
  {
    what: 'csv',
    act: 'Save the lists',
    use: 'For spreadsheets: the order of the night and the packing list.',
    ending: '-night.csv',
    type: 'text/csv',
  },
  {
    what: 'plan',
    act: 'Save the plan',
    use: 'For this page, here or elsewhere: the plan alone.',
    ending: '.plan.json',
    type: 'application/json',
  },
  {
    what: 'pack',
    act: 'Save the file pack',
    use: 'For another desk: the plan with its models and the picture under the roof.',
    ending: '.standclear.zip',
    type: 'application/zip',
  },
];
