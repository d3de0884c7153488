import { type MouseEvent, memo, useEffect, useRef } from 'react';
import { type Item, kindOf, nameOf } from '../../../core/plan/items';
import type { Kit } from '../../../core/plan/schema/kit';
import type { ItemReport } from '../../../core/report/types';
import { Glyph } from '../../parts/Glyph';
import { Icon, iconOfItem } from '../../parts/Icon';
import { toneOf } from '../../report/concerns';
import { Marks } from './Marks';
import { RenameField } from './RenameField';

interface ItemRowProps {
  readonly section: Item['section'];
  readonly record: Item['record'];
  readonly kit: Kit;
  readonly chosen: boolean;
  /** Of all chosen the last: the one that comes into sight. */
  readonly isLast: boolean;
  /** The one row of the list that the Tab key comes to. */
  readonly reachable: boolean;
  readonly renaming: boolean;
  readonly worst: ItemReport | null;
  readonly onChoose: (id: string, event: MouseEvent) => void;
  readonly onRename: (id: string | null) => void;
}

/** In one column of a phone the page would leave what the finger is on. */
const BESIDE = '(min-width: 768px)';

/** A thing on the roof: chosen by a click, with Shift and Ctrl like a list of files, renamed by a double click. */
export const ItemRow = memo(function ItemRow(props: ItemRowProps) {
  const { record, chosen, isLast, reachable, renaming, worst, onChoose, onRename } = props;
  const item = { section: props.section, record } as Item;
  const { id, label } = record;
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isLast && matchMedia(BESIDE).matches) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isLast]);
  const tone = worst ? toneOf(worst) : undefined;
  return (
    <li
      ref={row}
      className={record.hidden ? 'away' : undefined}
      aria-current={chosen ? 'true' : undefined}
      data-id={id}
    >
      {renaming ? (
        <span className="thing">
          <Icon name={iconOfItem(props.kit, item)} />
          <RenameField id={id} label={label} onDone={() => onRename(null)} />
        </span>
      ) : (
        <button
          type="button"
          className="thing"
          tabIndex={reachable ? 0 : -1}
          onClick={(event) => onChoose(id, event)}
          onDoubleClick={() => onRename(id)}
        >
          <Icon name={iconOfItem(props.kit, item)} />
          <span className="name">{nameOf(item)}</span>
          <span className="q kind">{kindOf(item)}</span>
          {worst ? <Glyph verdict={worst.verdict} {...(tone === undefined ? {} : { tone })} /> : <span />}
        </button>
      )}
      <Marks item={item} reachable={reachable} />
    </li>
  );
});
