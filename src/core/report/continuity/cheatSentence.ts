import type { CheatedLine, CheatFinding } from '../../continuity/cheats';
import type { LitFrom } from '../../light/face';
import { itemOf } from '../../plan/items';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { listed } from '../listed';
import { letterOf, nameOf, namesOf } from './names';

/** Less than this is not said beside a move four times as long, metres. */
const SMALL_METRES = 0.05;
/** Less than this is no move and no turn. */
const LEAST_METRES = 0.005;
const LEAST_DEGREES = 0.5;
/** No more things behind somebody than this are named. */
const MOST_NAMED = 2;

/** How far and which way: `0.40 m to the left and turned 20° clockwise`, left as the camera has it. */
export function cheatWays(
  way: Pick<CheatFinding, 'rightMetres' | 'towardsMetres' | 'turnDegrees'>,
  lengths: LengthSystem,
): readonly string[] {
  const [across, along] = [Math.abs(way.rightMetres), Math.abs(way.towardsMetres)];
  const said = (metres: number, other: number): boolean =>
    metres >= LEAST_METRES && (metres >= SMALL_METRES || metres * 4 >= other);
  const [aside, ahead] = [said(across, along), said(along, across)];
  const moves: { readonly metres: number; readonly words: string }[] = [];
  if (aside)
    moves.push({
      metres: across,
      words: `${formatLength(across, lengths)} to the ${way.rightMetres > 0 ? 'right' : 'left'}`,
    });
  if (ahead) {
    const [to, whole] = way.towardsMetres > 0 ? ['towards', ' the camera'] : ['away', ' from the camera'];
    moves.push({ metres: along, words: `${formatLength(along, lengths)} ${to}${aside ? '' : whole}` });
  }
  const words = moves.toSorted((a, b) => b.metres - a.metres).map((move) => move.words);
  if (Math.abs(way.turnDegrees) < LEAST_DEGREES) return words;
  const turned = way.turnDegrees > 0 ? 'clockwise' : 'anticlockwise';
  return [...words, `turned ${formatDegrees(Math.abs(way.turnDegrees), 0)} ${turned}`];
}

function lineWords(plan: Plan, lines: readonly CheatedLine[]): readonly string[] {
  if (lines.length === 0) return [];
  const changed = lines.filter(({ changesSide }) => changesSide);
  if (changed.length === 0) return [lines.length === 1 ? 'the line holds' : 'the lines hold'];
  return changed.map(({ pair }) => `the line between ${namesOf(plan, pair)} is crossed`);
}

const KEY_AT: Readonly<Record<LitFrom, string>> = {
  left: 'on the left of the face',
  right: 'on the right of the face',
  front: 'from the front',
  back: 'from behind only',
  dark: 'off the face',
};

function keyWords({ key }: CheatFinding): readonly string[] {
  if (!key) return [];
  if (key.master === key.cheated)
    return [
      key.cheated === 'dark' ? 'no lamp reaches the face in either' : `the key stays ${KEY_AT[key.cheated]}`,
    ];
  return [`the key comes ${KEY_AT[key.cheated]}, with the master’s mark it is ${KEY_AT[key.master]}`];
}

function behindWords(plan: Plan, { behind, shows, performerId }: CheatFinding): readonly string[] {
  const name = nameOf(plan, performerId);
  if (!shows.cheated) return [shows.master ? `${name} goes out of sight` : `${name} shows in neither`];
  if (!shows.master) return [`${name} comes into sight`];
  if (!behind) return [];
  const labels = (ids: readonly string[]): string =>
    listed(ids.slice(0, MOST_NAMED).map((id) => named(itemOf(plan, id)?.record.label ?? id)));
  const { goesOut, comesIn } = behind;
  const verb = (ids: readonly string[], one: string, several: string): string =>
    ids.length === 1 ? one : several;
  const out = `${labels(goesOut)} ${verb(goesOut, 'goes', 'go')} out from behind ${name}`;
  const whom = goesOut.length > 0 ? 'instead' : name;
  const into = `${labels(comesIn)} ${verb(comesIn, 'comes', 'come')} in behind ${whom}`;
  const words = [...(goesOut.length > 0 ? [out] : []), ...(comesIn.length > 0 ? [into] : [])];
  return words.length > 0 ? words : [`what stands behind ${name} stays`];
}

/** What a cheat does to a setup's picture: where somebody is, the line, the key and what stands behind them. */
export function cheatSentence(plan: Plan, finding: CheatFinding, lengths: LengthSystem = 'm'): string {
  const own = letterOf(plan, finding.setupId);
  const name = nameOf(plan, finding.performerId);
  const does = [...lineWords(plan, finding.lines), ...keyWords(finding), ...behindWords(plan, finding)];
  const where = listed(cheatWays(finding, lengths));
  return `${own} cheats ${name} ${where}${does.length > 0 ? `: ${does.join('; ')}` : ''}.`;
}
