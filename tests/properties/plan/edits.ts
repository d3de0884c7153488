import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { makeItem, PALETTE } from '../../../src/core/kit/palette';
import { addArea } from '../../../src/core/plan/edits/addArea';
import { addHole } from '../../../src/core/plan/edits/addHole';
import { addItem } from '../../../src/core/plan/edits/addItem';
import { addOpening } from '../../../src/core/plan/edits/addOpening';
import { addProbe } from '../../../src/core/plan/edits/addProbe';
import { addTape } from '../../../src/core/plan/edits/addTape';
import { arrayItems } from '../../../src/core/plan/edits/arrayItems';
import { blackItems } from '../../../src/core/plan/edits/blackItems';
import { changeArea } from '../../../src/core/plan/edits/changeArea';
import { addKey, changeKeys, removeKey, setKey } from '../../../src/core/plan/edits/changeKeys';
import { addMark, changeMark, type MarkPatch, removeMark } from '../../../src/core/plan/edits/changeMark';
import { changeProbe } from '../../../src/core/plan/edits/changeProbe';
import { changeSetup } from '../../../src/core/plan/edits/changeSetup';
import { changeUnderlay } from '../../../src/core/plan/edits/changeUnderlay';
import { duplicateItems } from '../../../src/core/plan/edits/duplicateItems';
import { expandGroup } from '../../../src/core/plan/edits/expandGroup';
import { freeId } from '../../../src/core/plan/edits/freeId';
import { groupItems } from '../../../src/core/plan/edits/groupItems';
import { hideItems } from '../../../src/core/plan/edits/hideItems';
import { insertCorner } from '../../../src/core/plan/edits/insertCorner';
import { labelItems } from '../../../src/core/plan/edits/labelItems';
import { letShow } from '../../../src/core/plan/edits/letShow';
import { lockItems } from '../../../src/core/plan/edits/lockItems';
import { mirrorItems } from '../../../src/core/plan/edits/mirrorItems';
import { moveArea } from '../../../src/core/plan/edits/moveArea';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { moveItems } from '../../../src/core/plan/edits/moveItems';
import { moveMark } from '../../../src/core/plan/edits/moveMark';
import { moveSetup } from '../../../src/core/plan/edits/moveSetup';
import { placeCamera } from '../../../src/core/plan/edits/placeCamera';
import { plugCable } from '../../../src/core/plan/edits/plugCable';
import { putModelOnDeck } from '../../../src/core/plan/edits/putModelOnDeck';
import { putOnStand } from '../../../src/core/plan/edits/putOnStand';
import { raiseItems } from '../../../src/core/plan/edits/raiseItems';
import { reframe } from '../../../src/core/plan/edits/reframe';
import { removeArea } from '../../../src/core/plan/edits/removeArea';
import { removeCorner } from '../../../src/core/plan/edits/removeCorner';
import { removeFrameLine } from '../../../src/core/plan/edits/removeFrameLine';
import { removeHole } from '../../../src/core/plan/edits/removeHole';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import { removeKitBody } from '../../../src/core/plan/edits/removeKitBody';
import { removeKitLens } from '../../../src/core/plan/edits/removeKitLens';
import { removeOpening } from '../../../src/core/plan/edits/removeOpening';
import { removeProbe } from '../../../src/core/plan/edits/removeProbe';
import { removeSetup } from '../../../src/core/plan/edits/removeSetup';
import { removeTape } from '../../../src/core/plan/edits/removeTape';
import { renameItem } from '../../../src/core/plan/edits/renameItem';
import { renameSetup } from '../../../src/core/plan/edits/renameSetup';
import { reposeCamera } from '../../../src/core/plan/edits/reposeCamera';
import { reshapeItem } from '../../../src/core/plan/edits/reshapeItem';
import { scaleModel } from '../../../src/core/plan/edits/scaleModel';
import { scaleUnderlay } from '../../../src/core/plan/edits/scaleUnderlay';
import { setAim } from '../../../src/core/plan/edits/setAim';
import { setArm } from '../../../src/core/plan/edits/setArm';
import { setBags } from '../../../src/core/plan/edits/setBags';
import { setBaseHeight } from '../../../src/core/plan/edits/setBaseHeight';
import { setBefore } from '../../../src/core/plan/edits/setBefore';
import { setClass } from '../../../src/core/plan/edits/setClass';
import { setCorner } from '../../../src/core/plan/edits/setCorner';
import { setDark } from '../../../src/core/plan/edits/setDark';
import { setFrameLine } from '../../../src/core/plan/edits/setFrameLine';
import { setGround } from '../../../src/core/plan/edits/setGround';
import { type HeadLight, setHeadLight } from '../../../src/core/plan/edits/setHeadLight';
import { setKeyPosition } from '../../../src/core/plan/edits/setKeyPosition';
import { setKitBody } from '../../../src/core/plan/edits/setKitBody';
import { setKitLens } from '../../../src/core/plan/edits/setKitLens';
import { setLegLength } from '../../../src/core/plan/edits/setLegLength';
import { setLens } from '../../../src/core/plan/edits/setLens';
import { setMains } from '../../../src/core/plan/edits/setMains';
import { setModelFile } from '../../../src/core/plan/edits/setModelFile';
import { setModifier } from '../../../src/core/plan/edits/setModifier';
import { setOpening } from '../../../src/core/plan/edits/setOpening';
import { setPlace } from '../../../src/core/plan/edits/setPlace';
import { setRides } from '../../../src/core/plan/edits/setRides';
import { setSky } from '../../../src/core/plan/edits/setSky';
import { setStandHeight } from '../../../src/core/plan/edits/setStandHeight';
import { setStop } from '../../../src/core/plan/edits/setStop';
import { setUnderlay } from '../../../src/core/plan/edits/setUnderlay';
import { setWish } from '../../../src/core/plan/edits/setWish';
import { takeBackShow } from '../../../src/core/plan/edits/takeBackShow';
import { turnItem } from '../../../src/core/plan/edits/turnItem';
import { turnItems } from '../../../src/core/plan/edits/turnItems';
import { turnModelToNorth } from '../../../src/core/plan/edits/turnModelToNorth';
import { turnSetup } from '../../../src/core/plan/edits/turnSetup';
import { ungroupItems } from '../../../src/core/plan/edits/ungroupItems';
import { itemsOf } from '../../../src/core/plan/items';
import type { FrameLine } from '../../../src/core/plan/schema/drawing';
import type { Body, Lens } from '../../../src/core/plan/schema/kit';
import type { Point, Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { GLOWS } from '../../../src/core/plan/schema/sky';
import { WETNESSES } from '../../../src/core/plan/wetness';
import type { Draw } from '../../plans/draw';
import { BLOCKING_EDITS, someLooks, someTowards } from './blockingEdits';
import { CAUTION_EDITS } from './cautionEdits';
import { Hat } from './hat';
import { NIGHT_EDITS } from './nightEdits';
import { POWER_EDITS } from './powerEdits';

const RUNS = ['wall', 'parapet', 'fence'] as const;
const CORNERED = [...RUNS, 'deck', 'line'] as const;
const LAMPS = ['head', 'practical', 'bulb string'] as const;
const CARRIED = ['head', 'flag', 'frame', 'bounce', 'monitor'] as const;
const ASSET = { sha256: 'a'.repeat(64), name: 'roof.glb', bytes: 1000 };

/** A corner of something that has corners: a run, an outline, a hole, a cable. */
function corner(hat: Hat): { readonly id: string; readonly index: number; readonly hole?: string } {
  const id = hat.draw.chance(0.3)
    ? hat.gear('cable', 'bulb string')
    : hat.draw.chance(0.2)
      ? hat.area()
      : hat.piece(...CORNERED);
  return { id, index: hat.index(), ...hat.hole(id) };
}

/** Fields for `reshapeItem`, of many kinds at once: those that a kind lacks are left out by the edit. */
function somePatch(hat: Hat): Readonly<Record<string, unknown>> {
  const { draw } = hat;
  const all: Readonly<Record<string, unknown>> = {
    size: [hat.size(), hat.size(), hat.size()],
    heightMetres: hat.size(),
    topMetres: hat.metres(),
    baseMetres: hat.metres(),
    widthMetres: hat.size(),
    material: draw.pick(['brick', 'timber', 'gold']),
    headingDegrees: hat.degrees(),
    door: { alongMetres: hat.metres() },
    clothes: { upper: draw.pick(['coat', 'shirt', 'armour']) },
    statureMetres: hat.size(),
    mesh: draw.pick([null, { cellMetres: 0.04 }, { cellMetres: 0.04, wireMetres: 0.001 }]),
    closed: draw.chance(0.5),
    bendMetres: draw.pick([undefined, 4, -4, 0.1]),
    tint: draw.pick([undefined, '#3a7bff', 'blue']),
    at: hat.point(),
    id: 'other',
    kind: 'box',
    label: '',
    bulbs: draw.pick([0, 5, 5.5, 201]),
    dim: hat.size(),
    nonsense: 1,
    transmission: draw.pick([undefined, 0, 0.5, 0.96]),
  };
  return Object.fromEntries(
    Object.keys(all)
      .filter(() => draw.chance(0.3))
      .map((field) => [field, all[field]]),
  );
}

type Make = (hat: Hat) => (plan: Plan) => Plan;

/** Every edit by the name of its file, with arguments drawn for a plan. */
export const EDITS: Readonly<Record<string, Make>> = {
  ...BLOCKING_EDITS,
  ...POWER_EDITS,
  ...CAUTION_EDITS,
  ...NIGHT_EDITS,
  setKitLens: (hat) => {
    const lens = hat.lens();
    const change: Lens = hat.draw.pick([
      { ...lens, id: 'own-lens', set: 'Own set' },
      { ...lens, widestStop: hat.draw.between(0, 8), narrowestStop: hat.draw.between(6, 22) },
      { ...lens, imageCircleMm: hat.draw.between(0, 40) },
      { ...lens, focalMm: hat.draw.pick([0, 5000, 40]) },
    ]);
    return (plan) => setKitLens(plan, { lens: change });
  },
  setKitBody: (hat) => {
    const body = hat.body();
    const change: Body = hat.draw.pick([
      { ...body, id: 'own-body' },
      { ...body, modes: [{ ...body.modes[0], gateMm: [hat.draw.between(-1, 60), 20] }] },
      { ...body, modes: [{ ...body.modes[0], id: 'another' }] },
      { ...body, modes: [...body.modes, body.modes[0]] },
    ]);
    return (plan) => setKitBody(plan, { body: change });
  },
  setFrameLine: (hat) => {
    const share = (): number => hat.draw.between(-0.05, 1.05);
    const id = hat.draw.chance(0.5) ? hat.frameLine() : `line-${hat.draw.whole(1, 30)}`;
    const line: FrameLine = { id, label: 'Own line', rect: [share(), share(), share(), share()] };
    return (plan) => setFrameLine(plan, { line });
  },
  removeKitLens: (hat) => {
    const id = hat.draw.chance(0.5) ? 'own-lens' : hat.lens().id;
    return (plan) => removeKitLens(plan, { id });
  },
  removeKitBody: (hat) => {
    const id = hat.draw.chance(0.5) ? 'own-body' : hat.body().id;
    return (plan) => removeKitBody(plan, { id });
  },
  removeFrameLine: (hat) => {
    const id = hat.frameLine();
    return (plan) => removeFrameLine(plan, { id });
  },
  addArea: (hat) => {
    const args = { wetness: hat.draw.pick(WETNESSES), outline: hat.spots(2, hat.draw.chance(0.05) ? 70 : 7) };
    return (plan) => addArea(plan, args);
  },
  changeArea: (hat) => {
    const patch = hat.draw.pick([
      {},
      { wetness: hat.draw.pick(WETNESSES) },
      { label: hat.draw.pick(['Under the tank', ' ', 'x'.repeat(81)]) },
      { label: undefined },
    ]);
    const id = hat.area();
    return (plan) => changeArea(plan, { id, patch });
  },
  moveArea: (hat) => {
    const args = { id: hat.area(), by: hat.spot() };
    return (plan) => moveArea(plan, args);
  },
  removeArea: (hat) => {
    const id = hat.area();
    return (plan) => removeArea(plan, { id });
  },
  addHole: (hat) => {
    const args = { id: hat.piece('deck'), outline: smallOutline(hat) };
    return (plan) => addHole(plan, args);
  },
  addItem: (hat) => {
    const id = hat.draw.chance(0.2)
      ? hat.id()
      : freeId(
          itemsOf(hat.plan).map(({ record }) => record),
          'added',
        );
    const at: Point = [hat.draw.between(-5, 5), 0, hat.draw.between(-5, 5)];
    const size: Point = [1, 0.4, 1];
    const record = { id, label: 'Added', kind: 'riser', at, headingDegrees: 0, size } as const;
    return (plan) => addItem(plan, { section: 'piece', record });
  },
  addOpening: (hat) => {
    const args = {
      id: hat.piece(...RUNS),
      alongMetres: hat.metres(),
      widthMetres: hat.size(),
      sillMetres: hat.size(),
      heightMetres: hat.size(),
    };
    return (plan) => addOpening(plan, args);
  },
  addProbe: (hat) => {
    const at = hat.point();
    return (plan) => addProbe(plan, { at });
  },
  changeProbe: (hat) => {
    const id = hat.probe();
    const patch = hat.draw.pick([
      {},
      { label: 'At the tank' },
      { label: '' },
      { at: hat.point() },
      { normal: 'up' as const },
      { normal: [hat.degrees(), hat.draw.between(-100, 100)] as [number, number] },
    ]);
    return (plan) => changeProbe(plan, { id, patch });
  },
  addTape: (hat) => {
    const args = { from: hat.spot(), to: hat.spot() };
    return (plan) => addTape(plan, args);
  },
  arrayItems: (hat) => {
    const { draw } = hat;
    const args = {
      ids: hat.ids(),
      along: hat.spots(0, 5),
      count: draw.chance(0.02) ? 60 : draw.pick([-1, 0, 1, 2, 3, 3.7]),
      ...(draw.chance(0.5) && { spacingMetres: hat.size() }),
      follow: draw.chance(0.5),
    };
    return (plan) => arrayItems(plan, args).plan;
  },
  changeKeys: (hat) => {
    const setupId = hat.setup();
    const keyIndex = hat.index();
    const beat = hat.oneOf(hat.plan.beats, { id: 'never', label: '', atSeconds: 0 }).id;
    const key = {
      atSeconds: hat.draw.between(-1, 9),
      ...(hat.draw.chance(0.3) && { beat }),
      position: hat.point(),
      headingDegrees: hat.degrees(),
      tiltDegrees: hat.draw.between(-100, 100),
      rollDegrees: 0,
      ...(hat.draw.chance(0.3) && { alongMetres: hat.size() }),
    };
    const ease = hat.draw.pick(['linear', 'eased'] as const);
    switch (hat.draw.pick(['add', 'set', 'remove', 'ease'] as const)) {
      case 'add':
        return (plan) => addKey(plan, { setupId, key });
      case 'set':
        return (plan) =>
          setKey(plan, { setupId, keyIndex, patch: { ...key, alongMetres: undefined, beat: undefined } });
      case 'remove':
        return (plan) => removeKey(plan, { setupId, keyIndex });
      case 'ease':
        return (plan) => changeKeys(plan, { setupId, change: (keys) => keys, ease });
    }
  },
  changeMark: (hat) => {
    const who = hat.oneOf(hat.plan.cast, hat.plan.cast[0]);
    const performerId = who?.id ?? 'nobody';
    const markId = hat.oneOf(
      (who?.marks ?? []).map(({ id }) => id),
      'none',
    );
    const beat = hat.oneOf(
      hat.plan.beats.map(({ id }) => id),
      'never',
    );
    const patch = hat.draw.pick<MarkPatch>([
      { at: hat.spot(), headingDegrees: hat.degrees(), beat },
      { faces: someTowards(hat), facesOnTheWay: someTowards(hat) },
      { looks: someLooks(hat), looksOnTheWay: someLooks(hat) },
      { faces: undefined, looks: undefined, holdSeconds: hat.size() },
    ]);
    switch (hat.draw.pick(['add', 'change', 'remove'] as const)) {
      case 'add':
        return (plan) => addMark(plan, { performerId });
      case 'change':
        return (plan) => changeMark(plan, { performerId, markId, patch });
      case 'remove':
        return (plan) => removeMark(plan, { performerId, markId });
    }
  },
  changeSetup: (hat) => {
    const track = hat.gear('track');
    const hold = hat.oneOf(
      hat.plan.cast.map(({ id }) => id),
      'nobody',
    );
    const patch = hat.draw.pick([
      {},
      { stop: hat.size(), iso: hat.draw.between(-100, 6400) },
      { support: 'dolly' as const, track },
      { track: undefined, operator: undefined },
      { operator: { hold, at: [hat.draw.between(-0.2, 1.2), 0.4] as [number, number] } },
      { sway: { seed: 4, metres: hat.size(), degrees: 1, counted: true } },
      { focus: { racks: [{ atSeconds: 1, pullSeconds: 0.5, on: { follow: hold } }] } },
      { delivery: hat.draw.between(0, 6), label: 'Again' },
      { lens: 'no such lens' },
    ]);
    const args = { setupId: hat.setup(), patch };
    return (plan) => changeSetup(plan, args);
  },
  changeUnderlay: (hat) => {
    const patch = {
      at: hat.draw.pick([
        [0, 0],
        [4, 5],
      ] as [number, number][]),
      strength: hat.draw.between(0, 1),
    };
    return (plan) => changeUnderlay(plan, patch);
  },
  duplicateItems: (hat) => {
    const args = { ids: hat.ids(), by: hat.spot() };
    return (plan) => duplicateItems(plan, args).plan;
  },
  groupItems: (hat) => {
    const ids = hat.ids();
    return (plan) => groupItems(plan, { ids });
  },
  blackItems: (hat) => {
    const args = { ids: hat.ids(), blacked: hat.draw.chance(0.5) };
    return (plan) => blackItems(plan, args);
  },
  letShow: (hat) => {
    const reason = hat.draw.pick(['Reads as a street lamp', '', ' ', 'x'.repeat(201)]);
    const args = { id: hat.id(), setupId: hat.setup(), reason };
    return (plan) => letShow(plan, args);
  },
  takeBackShow: (hat) => {
    const args = { id: hat.id(), setupId: hat.setup() };
    return (plan) => takeBackShow(plan, args);
  },
  hideItems: (hat) => {
    const args = { ids: hat.ids(), hidden: hat.draw.chance(0.5) };
    return (plan) => hideItems(plan, args);
  },
  insertCorner: (hat) => {
    const args = { ...corner(hat), at: hat.spot() };
    return (plan) => insertCorner(plan, args);
  },
  labelItems: (hat) => {
    const args = {
      ids: hat.ids(),
      stem: hat.draw.pick(['Crate', 'Lamp stand', ' ', 'x'.repeat(100), 'a\nb']),
    };
    return (plan) => labelItems(plan, args);
  },
  lockItems: (hat) => {
    const args = { ids: hat.ids(), locked: hat.draw.chance(0.3) };
    return (plan) => lockItems(plan, args);
  },
  mirrorItems: (hat) => {
    const args = {
      ids: hat.ids(),
      axis: { at: hat.spot(), bearingDegrees: hat.degrees() },
      copy: hat.draw.chance(0.3),
    };
    return (plan) => mirrorItems(plan, args).plan;
  },
  moveItem: (hat) => {
    const args = { id: hat.id(), to: hat.spot() };
    return (plan) => moveItem(plan, args);
  },
  moveItems: (hat) => {
    const args = { ids: expandGroup(hat.plan, hat.ids()), by: hat.spot(), evenLocked: hat.draw.chance(0.2) };
    return (plan) => moveItems(plan, args);
  },
  moveMark: (hat) => {
    const performer = hat.plan.cast.length > 0 ? hat.draw.pick(hat.plan.cast) : null;
    const mark = performer && performer.marks.length > 0 ? hat.draw.pick(performer.marks).id : 'none';
    const args = { performerId: performer?.id ?? 'nobody', markId: mark, to: hat.spot() };
    return (plan) => moveMark(plan, args);
  },
  moveSetup: (hat) => {
    const args = { setupId: hat.setup(), to: hat.spot() };
    return (plan) => moveSetup(plan, args);
  },
  placeCamera: (hat) => {
    const args = {
      label: 'Another',
      body: hat.draw.pick(BUILT_IN_KIT.bodies),
      lens: hat.draw.pick(BUILT_IN_KIT.lenses),
      position: hat.draw.pick([
        [0, 1.5, 4],
        [3, 1.2, 5],
      ] as [number, number, number][]),
      headingDegrees: hat.draw.between(0, 360),
    };
    return (plan) => (plan.setups.length > 6 ? plan : placeCamera(plan, args));
  },
  plugCable: (hat) => {
    const args = {
      id: hat.gear('cable'),
      end: hat.draw.pick(['from', 'to'] as const),
      to: hat.orNull(hat.gear('generator', 'distro', 'head', 'stand', 'practical', 'bulb string')),
    };
    return (plan) => plugCable(plan, args);
  },
  putModelOnDeck: (hat) => {
    const args = { id: hat.piece('model'), foundMetres: hat.metres(), deckMetres: hat.metres() };
    return (plan) => putModelOnDeck(plan, args);
  },
  putOnStand: (hat) => {
    const args = { id: hat.gear(...CARRIED), standId: hat.orNull(hat.gear('stand')) };
    return (plan) => putOnStand(plan, args);
  },
  raiseItems: (hat) => {
    const args = { ids: hat.ids(), byMetres: hat.metres(), evenLocked: hat.draw.chance(0.2) };
    return (plan) => raiseItems(plan, args);
  },
  reframe: (hat) => {
    const setupId = hat.setup();
    const keys = hat.plan.setups.find(({ id }) => id === setupId)?.move.keys ?? [];
    const args = {
      setupId,
      lens: hat.draw.chance(0.1) ? 'no such lens' : hat.oneOf(hat.plan.kit.lenses, BUILT_IN_KIT.lenses[0]).id,
      by: hat.point(),
      alongMetres: hat.draw.chance(0.5) ? keys.map(() => hat.size()) : null,
    };
    return (plan) => reframe(plan, args);
  },
  removeCorner: (hat) => {
    const args = corner(hat);
    return (plan) => removeCorner(plan, args);
  },
  removeHole: (hat) => {
    const id = hat.piece('deck');
    return (plan) => removeHole(plan, { id, holeId: hat.hole(id).hole ?? 'none' });
  },
  removeItems: (hat) => {
    const ids = hat.ids();
    return (plan) => removeItems(plan, { ids });
  },
  removeOpening: (hat) => {
    const id = hat.piece(...RUNS);
    const args = { id, openingId: hat.opening(id) };
    return (plan) => removeOpening(plan, args);
  },
  setRides: (hat) => {
    const [id, setupId] = [hat.gear('dolly'), hat.draw.chance(0.3) ? null : hat.setup()];
    return (plan) => setRides(plan, { id, setupId });
  },
  removeSetup: (hat) => {
    const setupId = hat.setup();
    return (plan) => removeSetup(plan, { setupId });
  },
  removeProbe: (hat) => {
    const id = hat.probe();
    return (plan) => removeProbe(plan, { id });
  },
  removeTape: (hat) => {
    const id = hat.tape();
    return (plan) => removeTape(plan, { id });
  },
  renameItem: (hat) => {
    const args = { id: hat.id(), label: hat.draw.pick(['Door lamp', 'Crate 1', 'Deck']) };
    return (plan) => renameItem(plan, args);
  },
  renameSetup: (hat) => {
    const args = { setupId: hat.setup(), label: hat.draw.pick(['Wide', 'Close']) };
    return (plan) => renameSetup(plan, args);
  },
  reposeCamera: (hat) => {
    const { draw } = hat;
    const setupId = hat.setup();
    const hold = hat.oneOf(
      hat.plan.cast.map(({ id }) => id),
      'nobody',
    );
    const args = {
      setupId,
      lens: draw.chance(0.1) ? 'no such lens' : hat.lens().id,
      by: hat.point(),
      alongMetres: draw.chance(0.3) ? [hat.size(), hat.metres()] : null,
      panDegrees: hat.degrees(),
      tiltDegrees: draw.between(-60, 60),
      rollDegrees: draw.pick([0, 0, 12]),
      focalMm: draw.chance(0.2) ? [hat.draw.between(10, 200)] : null,
      operator: draw.chance(0.2) ? { hold, at: [draw.between(-0.1, 1.1), 0.4] as [number, number] } : null,
    };
    return (plan) => reposeCamera(plan, args);
  },
  reshapeItem: (hat) => {
    const args = { id: hat.id(), patch: somePatch(hat) };
    return (plan) => reshapeItem(plan, args);
  },
  scaleModel: (hat) => {
    const args = {
      id: hat.piece('model'),
      from: [0, 0] as Spot,
      to: [2, 1] as Spot,
      metres: hat.draw.between(1, 4),
    };
    return (plan) => scaleModel(plan, args);
  },
  scaleUnderlay: (hat) => {
    const args = { from: [0, 0] as Spot, to: [2, 1] as Spot, metres: hat.draw.between(1.8, 2.8) };
    return (plan) => scaleUnderlay(plan, args);
  },
  setAim: (hat) => {
    const args = { id: hat.gear('head'), aim: hat.point() };
    return (plan) => setAim(plan, args);
  },
  setArm: (hat) => {
    const arm = { lengthMetres: hat.size(), tiltDegrees: hat.degrees(), headingDegrees: hat.degrees() };
    const args = { id: hat.gear('stand'), arm: hat.orNull(arm) };
    return (plan) => setArm(plan, args);
  },
  setBags: (hat) => {
    const bags = { count: hat.draw.pick([-1, 1, 2.4, 3, 30]), kilograms: hat.draw.pick([0, 7, 10, 100]) };
    const args = { id: hat.gear('stand'), bags: hat.orNull(bags) };
    return (plan) => setBags(plan, args);
  },
  setBaseHeight: (hat) => {
    const args = { id: hat.id(), metres: hat.metres() };
    return (plan) => setBaseHeight(plan, args);
  },
  setClass: (hat) => {
    const head = hat.draw.pick(BUILT_IN_KIT.heads);
    const stand = hat.draw.pick(BUILT_IN_KIT.stands);
    const args = hat.draw.chance(0.5) ? { id: hat.gear(...LAMPS), head } : { id: hat.gear('stand'), stand };
    return (plan) => setClass(plan, args);
  },
  setCorner: (hat) => {
    const args = { ...corner(hat), to: hat.spot() };
    return (plan) => setCorner(plan, args);
  },
  setDark: (hat) => {
    const { draw } = hat;
    const dark = hat.orNull({ contrastStops: draw.between(-1, 5), stopsUnder: draw.pick([-2, 3, 4, 20]) });
    const uprights = {
      leanDegrees: draw.between(-5, 60),
      leastHeight: draw.between(-0.5, 1.5),
      likeWidth: draw.between(0, 30),
      likeStops: draw.between(-1, 12),
      among: draw.between(0, 60),
    };
    const more = dark && draw.chance(0.5) ? { ...dark, uprights } : dark;
    return (plan) => setDark(plan, { dark: more });
  },
  setGround: (hat) => {
    const patch = hat.draw.pick([{}, { wetness: 'dry' }, { surface: 'tile', wetness: 'puddled' }] as const);
    return (plan) => setGround(plan, { patch });
  },
  setHeadLight: (hat) => {
    const { draw } = hat;
    const table = {
      verticalDegrees: [0, draw.between(0, 60), 90],
      horizontalDegrees: draw.pick([[0], [0, 90], [0, 91], [90, 0]]),
      candela: draw.pick([
        [[9, 5, 0]],
        [
          [9, 5, 0],
          [9, 4, 0],
        ],
        [[0, 0, 0]],
        [[-1, 0, 0]],
        [[1]],
      ]),
      source: 'lamp.ies',
    };
    const lights: readonly (HeadLight | null)[] = [
      null,
      { distribution: table },
      { reading: { lux: draw.pick([0, 1850, 1e6]), metres: draw.pick([3, 0, 150]) } },
    ];
    const args = { headId: hat.headClass(), light: draw.pick(lights) };
    return (plan) => setHeadLight(plan, args);
  },
  setKeyPosition: (hat) => {
    const args = { setupId: hat.setup(), keyIndex: hat.index(), position: hat.point() };
    return (plan) => setKeyPosition(plan, args);
  },
  setLegLength: (hat) => {
    const args = { ...corner(hat), metres: hat.size() };
    return (plan) => setLegLength(plan, args);
  },
  setLens: (hat) => {
    const lens = hat.oneOf(hat.plan.kit.lenses, BUILT_IN_KIT.lenses[0]).id;
    const args = { setupId: hat.setup(), lens };
    return (plan) => setLens(plan, args);
  },
  setModelFile: (hat) => {
    const asset = { ...ASSET, sha256: hat.draw.pick(['a', 'b']).repeat(64) };
    const extent = { lowest: [0, 0, 0] as Point, highest: [1, 1, 1] as Point };
    const args = { id: hat.piece('model'), asset, extent };
    return (plan) => setModelFile(plan, args);
  },
  setBefore: (hat) => {
    const { draw } = hat;
    const all = {
      mired: draw.pick([undefined, 0, -131, 900]),
      density: draw.pick([undefined, 0.3, -1]),
      diffusion: draw.pick([undefined, { transmission: hat.size(), spreadDegrees: hat.degrees() }]),
      doubles: draw.pick([undefined, 0, 1, 2.6, 99]),
      singles: draw.pick([undefined, 1]),
    };
    const before = Object.fromEntries(Object.entries(all).filter(() => draw.chance(0.4)));
    const args = { id: hat.gear(...LAMPS), before };
    return (plan) => setBefore(plan, args);
  },
  setModifier: (hat) => {
    const modifier = hat.orNull(hat.draw.pick(['softbox', 'snoot'] as const));
    const args = { id: hat.gear('head'), modifier };
    return (plan) => setModifier(plan, args);
  },
  setOpening: (hat) => {
    const id = hat.piece(...RUNS);
    const args = {
      id,
      openingId: hat.opening(id),
      patch: { alongMetres: hat.metres(), widthMetres: hat.size() },
    };
    return (plan) => setOpening(plan, args);
  },
  setMains: (hat) => {
    const args = { hertz: hat.draw.pick([50, 60, null] as const) };
    return (plan) => setMains(plan, args);
  },
  setPlace: (hat) => {
    const patch = hat.draw.pick([
      {},
      { title: 'Another night' },
      { place: { date: '2026-12-01', northDegrees: 12 } },
      { safety: { metres: 0.4 }, notes: 'Bring tea.' },
    ]);
    return (plan) => setPlace(plan, { patch });
  },
  setSky: (hat) => {
    const glow = hat.draw.pick(GLOWS);
    const time = hat.draw.pick(['22:30', '03:05', '24:00']);
    const utcOffsetHours = hat.draw.between(-15, 15);
    const sky = hat.draw.pick([
      null,
      { glow },
      { glow, clock: { time, utcOffsetHours }, moon: hat.draw.chance(0.5) },
    ]);
    return (plan) => setSky(plan, { sky });
  },
  setStandHeight: (hat) => {
    const args = { id: hat.gear('stand'), heightMetres: hat.draw.between(0.5, 4) };
    return (plan) => setStandHeight(plan, args);
  },
  setStop: (hat) => {
    const args = { setupId: hat.setup(), stop: hat.draw.between(1, 22) };
    return (plan) => setStop(plan, args);
  },
  setUnderlay: (hat) => {
    const pixels: [number, number] = [800, 600];
    const underlay = {
      asset: ASSET,
      pixels,
      at: hat.spot(),
      headingDegrees: hat.degrees(),
      metresPerPixel: hat.draw.between(0.001, 0.1),
      strength: hat.size(),
    };
    const args = { underlay: hat.orNull(underlay) };
    return (plan) => setUnderlay(plan, args);
  },
  setWish: (hat) => {
    const args = { id: hat.id(), wish: hat.draw.pick(['keep out', 'either', 'must show'] as const) };
    return (plan) => setWish(plan, args);
  },
  turnItem: (hat) => {
    const args = { id: hat.id(), headingDegrees: hat.degrees() };
    return (plan) => turnItem(plan, args);
  },
  turnItems: (hat) => {
    const about = hat.draw.chance(0.5) ? { about: hat.spot() } : {};
    const args = { ids: hat.ids(), byDegrees: hat.degrees(), ...about };
    return (plan) => turnItems(plan, args);
  },
  turnModelToNorth: (hat) => {
    const args = { id: hat.piece('model'), from: hat.spot(), to: hat.spot(), bearingDegrees: hat.degrees() };
    return (plan) => turnModelToNorth(plan, args);
  },
  turnSetup: (hat) => {
    const args = { setupId: hat.setup(), byDegrees: hat.degrees() };
    return (plan) => turnSetup(plan, args);
  },
  ungroupItems: (hat) => {
    const ids = hat.ids();
    return (plan) => ungroupItems(plan, { ids });
  },
};

/** A small triangle, so that it may lie inside a deck. */
function smallOutline(hat: Hat): Spot[] {
  const [x, z] = hat.spot();
  const size = hat.draw.between(0.2, 2);
  return [
    [x, z],
    [x + size, z],
    [x, z + size],
  ];
}

/** Something from the palette, drawn somewhere. */
export function somePut(plan: Plan, draw: Draw): (plan: Plan) => Plan {
  const hat = new Hat(plan, draw);
  const entry = draw.pick(PALETTE);
  const where = { spots: hat.spots(0, 4), closed: draw.chance(0.3) };
  return (before) => makeItem(before, entry.id, where)?.plan ?? before;
}

const NAMES = Object.keys(EDITS);
/** What takes something away, drawn more often from a plan that has grown. */
const REMOVING = ['removeItems', 'removeSetup', 'removeTape'];

/** An edit with arguments for a plan, and its name. */
export function someEdit(plan: Plan, draw: Draw, mostItems: number): readonly [string, (plan: Plan) => Plan] {
  const items = plan.pieces.length + plan.cast.length + plan.gear.length;
  if (items < mostItems && draw.chance(0.15)) return ['makeItem', somePut(plan, draw)];
  const name = draw.pick(items > mostItems ? REMOVING : NAMES);
  return [name, EDITS[name](new Hat(plan, draw))];
}
