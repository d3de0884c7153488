import { useRef } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import type { LengthSystem } from '../../../core/units/lengths';
import { endsOfPair, keyOfPair, type Lines, type Pair } from '../../../desk/blocking/lines';
import { seenPlan } from '../../../desk/blocking/onlyIn';
import { tapeAt } from '../../../desk/blocking/tapeShape';
import { liveStore } from '../../../desk/liveStore';
import { cheatsOn, type DrawnCheat, goes } from '../blocking/cheats';
import { throughBoth } from '../blocking/lines';
import { clearWayFor, roofWalks } from '../blocking/walks';
import { slantDimension } from '../geometry/dimensions';
import { circle, polygon, polyline } from '../geometry/paths';
import type { Bounds } from '../geometry/spots';
import { useDriver } from '../useDriver';
import type { SheetView } from '../useSheetView';
import '../styles/blocking.css';

/** The ring around the place of a fault, and the cross in it; pixels. */
const RING = 8;
const CROSS = 3.5;

interface Props {
  /** The plan with the cast where it is seen, and as the master has it. */
  readonly plan: Plan;
  readonly master: Plan;
  readonly sheet: SheetView;
  readonly chosenIds: readonly string[];
  readonly lines: Lines;
  readonly bounds: Bounds;
  readonly lengths: LengthSystem;
  /** The setup that is looked through, and whether marks are seen as it has them. */
  readonly setup: Setup | null;
  readonly onlyIn: boolean;
}

/** The line of a pair, where walks meet something and how they might go round, and what is cheated. In pixels. */
export function BlockingLayer(props: Props) {
  const { plan, master, sheet, chosenIds, lines, bounds, lengths, setup, onlyIn } = props;
  const hits = roofWalks(plan).filter(({ hit }) => hit !== null);
  return (
    <g className="blocking-layer">
      {lines.pairs.map((pair) => (
        <PairLine
          key={keyOfPair(pair)}
          pair={pair}
          sheet={sheet}
          bounds={bounds}
          chosen={pair.some((id) => chosenIds.includes(id))}
        />
      ))}
      {hits.map((each) => {
        const { performer, walk, hit } = each;
        if (!hit) return null;
        const way = onlyIn || !chosenIds.includes(performer.id) ? null : clearWayFor(plan, each);
        const [x, y] = sheet.at(hit.at);
        return (
          <g key={`${performer.id} ${walk.toMark}`} className="walk-fault">
            {way && <path className="clear-way" d={polyline(way.path.map(sheet.at))} />}
            <path className="fault-ring" d={circle([x, y], RING)} />
            <path
              className="fault-ring"
              d={`M${x - CROSS} ${y - CROSS}L${x + CROSS} ${y + CROSS}M${x - CROSS} ${y + CROSS}L${x + CROSS} ${y - CROSS}`}
            />
          </g>
        );
      })}
      {setup &&
        cheatsOn(master, setup, lengths).map((cheat) => (
          <Cheated key={`${cheat.performerId} ${cheat.markId}`} cheat={cheat} onlyIn={onlyIn} at={sheet.at} />
        ))}
    </g>
  );
}

interface PairLineProps {
  readonly pair: Pair;
  readonly sheet: SheetView;
  readonly bounds: Bounds;
  readonly chosen: boolean;
}

/** The line through two performers wherever they are, over the whole deck: moved by the clock itself. */
function PairLine({ pair, sheet, bounds, chosen }: PairLineProps) {
  const line = useRef<SVGPathElement>(null);
  useDriver(() => {
    const ends = endsOfPair(seenPlan(), pair, liveStore.getState().seconds);
    const within = ends && throughBoth(ends, bounds);
    line.current?.setAttribute('d', within ? polyline(within.map(sheet.at)) : '');
  });
  return <path ref={line} className={`pair-line${chosen ? ' chosen' : ''}`} />;
}

interface CheatedProps {
  readonly cheat: DrawnCheat;
  readonly onlyIn: boolean;
  readonly at: SheetView['at'];
}

/** The place that a mark does not have here: the master's, with how far off it is, or that of the setup. */
function Cheated({ cheat, onlyIn, at }: CheatedProps) {
  const { master, cheated } = cheat;
  const other = onlyIn ? master : cheated;
  const outline = polygon(tapeAt(other.at, other.headingDegrees).map(at));
  const way = onlyIn && goes(cheat) ? slantDimension(at(master.at), at(cheated.at)) : null;
  return (
    <g className={`cheat${onlyIn ? ' master' : ''}`}>
      <path className="ghost-tape" d={outline} />
      {way && (
        <>
          <path className="dim-line" d={way.line} />
          <path className="dim-tick" d={way.ticks} />
        </>
      )}
    </g>
  );
}
