import { formatDay } from '../../day';
import type { FitRuleFile } from '../../fit-rules';
import type { DemoSource } from '../demo-shop';
import { paper, says, type LineRoom, type Paper, type Saying } from '../lines/line-room';
import { sourceFileOf } from './papers-of-line';
import { ruleKey, ruleOf, type Shelf } from './rules-of-line';

/** The name of the bulletin that is kept for a new user to publish. */
export const KEPT_BULLETIN = 'DRIFTBREAK-kept';

interface Opening {
  readonly position: string;
  /** Its number among the rules of the position. */
  readonly n: number;
  readonly part: string | null;
  readonly terms: Saying['terms'];
}

/** Three papers that lie on the manager's desk: one kept, one dated ahead, one hardly begun. */
export function drafts(lines: readonly LineRoom[], shelf: Shelf): DemoSource[] {
  const line = (code: string) => lines.find((one) => one.code === code)!;
  return [
    keptBulletin(line('DRIFTBREAK'), shelf),
    datedAhead(line('FALLOWSWEEP'), shelf),
    begun(line('SODTURN'), shelf),
  ];
}

/**
 * Publishing this one today turns some 150 units that left the shop in the last three years into callbacks: all that
 * hold a plain pin in the auger and were built in the five and a half years it speaks of.
 */
function keptBulletin(line: LineRoom, shelf: Shelf): DemoSource {
  const { ago, back } = shelf.calendar;
  const kept = paper('service-bulletin', 'DB-SB-09', 'Plain auger pins break the gear case', back(11), {
    effective: back(5),
    receivedAfter: 8,
  });
  const opens: Opening[] = [
    {
      position: 'AUG-PIN',
      n: 5,
      part: '30-1127B',
      terms: {
        built: [ago(8, 9), ago(2, 3)],
        bars: [
          ['30-1127', 'breaks-later', 'its bar stock came harder than drawn; the gear case goes first'],
          ['30-1120', 'breaks-sooner', 'too weak for these augers'],
        ],
        action: 'call-back',
        replaces: [3],
      },
    },
    {
      position: 'CHT-GER',
      n: 4,
      part: '33-0107',
      terms: { built: [ago(7, 6), ago(7, 9)], action: 'next-service' },
    },
  ];
  return draft(
    line,
    'kept',
    kept,
    opens,
    [ruleKey(line, 'CHT-GER', 1)],
    shelf,
    'Fit the grooved pin in all four places. Spare pins of the plain kind come back to the counter.',
  );
}

/** In force in three weeks: it is shown as coming, and its recheck starts on its day. */
function datedAhead(line: LineRoom, shelf: Shelf): DemoSource {
  const { ago, back } = shelf.calendar;
  const ahead = paper('service-bulletin', 'FS-TM-15', 'Skid shoes with a loose sole', back(4), {
    effective: back(-21),
    receivedAfter: 3,
  });
  const opens: Opening[] = [
    {
      position: 'SKD-SHOE',
      n: 4,
      part: '730.200.05',
      terms: {
        built: [ago(4, 2), ago(3, 2)],
        bars: [['730.200.06', 'unsafe', 'the sole can come off under way']],
        action: 'next-service',
        replaces: [3],
      },
    },
  ];
  return draft(line, 'ahead', ahead, opens, [], shelf, 'New soles are riveted from the day named on.');
}

function begun(line: LineRoom, shelf: Shelf): DemoSource {
  const { back } = shelf.calendar;
  const noted = paper('shop-finding', 'SF-19', 'Depth stake clips that fall out', back(2), { receivedAfter: 0 });
  const opens: Opening[] = [
    { position: 'DRAG-STK', n: 4, part: null, terms: { bars: [['G523-040', 'other', 'falls out on stony ground']] } },
  ];
  return draft(line, 'begun', noted, opens, [], shelf, 'Seen twice this month; to be talked over with Quilmoor.');
}

function draft(
  line: LineRoom,
  name: string,
  written: Paper,
  opens: readonly Opening[],
  ends: readonly string[],
  shelf: Shelf,
  summary: string,
): DemoSource {
  return {
    ...sourceFileOf(line, name, written, shelf.calendar),
    summary,
    state: 'draft',
    publishedAt: null,
    draft: {
      opens: opens.map((opening) => openedRule(line, name, written, opening, shelf)),
      ends: ends.map((rule) => ({ rule, on: formatDay(written.effective ?? written.issued) })),
    },
  };
}

function openedRule(
  line: LineRoom,
  name: string,
  written: Paper,
  { position, n, part, terms }: Opening,
  shelf: Shelf,
): FitRuleFile {
  const room = line.positions.find(({ code }) => code === position)!;
  return ruleOf(line, room, says(name, part, terms), n, written, shelf);
}
