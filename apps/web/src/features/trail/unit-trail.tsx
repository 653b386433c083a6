import { VERDICTS, type TrailEntry, type VerdictWord } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { VerdictMark } from '../../components/verdict-mark';
import { sayInstant } from '../../lib/say';
import { sayAct, sayChange, sayKnown, sayOtherwise } from './trail-words';
import classes from './trail.module.css';

/** Everything that was done about one unit, oldest first, each with what the shop could have known at that moment. */
export function UnitTrail({ entries }: { entries: readonly TrailEntry[] }) {
  if (entries.length === 0)
    return (
      <EmptyView title="Nothing is written down yet">
        <p>What is done about this unit from now on will stand here. What was brought in with a whole shop does not.</p>
      </EmptyView>
    );
  return (
    <ol className={classes.trail} aria-label="What was done, oldest first">
      {entries.map((entry) => (
        <li key={`${entry.place}-${entry.noun}-${entry.key}`}>
          <p className="num">{sayInstant(entry.at)}</p>
          <Entry entry={entry} />
        </li>
      ))}
    </ol>
  );
}

function Entry({ entry }: { entry: TrailEntry }) {
  const { by, where, part, place } = entry;
  const about = [where, part].filter(Boolean).join(', ');
  return (
    <div>
      <p>
        <strong>{sayAct(entry)}</strong>
        {about ? `: ${about}` : null} <span className="soft">by {by ?? 'the program itself'}</span>
      </p>
      <Verdicts entry={entry} />
      <RulingThen entry={entry} />
      <dl className={classes.change}>
        {sayChange(entry).map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p className="soft">
        {sayKnown(entry)}. Row {place} of the trail.
      </p>
    </div>
  );
}

const JUDGED = new Set(['verdict_change', 'place_record', 'flag', 'pick', 'callback_reason']);

/** The verdict an entry speaks of, and the one its place has today. */
function Verdicts({ entry: { noun, change, now } }: { entry: TrailEntry }) {
  if (!JUDGED.has(noun)) return null;
  const [was, then] = [verdictIn(change['from_verdict']), verdictIn(change['to_verdict'])];
  if (!then && !now) return null;
  return (
    <p className={classes.verdicts}>
      {then ? (
        <span>
          {was ? (
            <>
              Before <VerdictMark verdict={was} />{' '}
            </>
          ) : null}
          Then <VerdictMark verdict={then} />
        </span>
      ) : null}
      {now ? (
        <span>
          Today at this place <VerdictMark verdict={now.verdict} />
          {now.revision === null ? null : <span className="soft"> under revision {now.revision}</span>}
        </span>
      ) : null}
    </p>
  );
}

/** What was right at that place by the papers of that day, as the shop knew them and the unit then. */
function RulingThen({ entry: { noun, ruling } }: { entry: TrailEntry }) {
  if (!JUDGED.has(noun) || ruling === null) return null;
  return (
    <p>
      By the papers of that day, as known then: {ruling.sentence}{' '}
      <span className="soft">
        {ruling.sameToday ? 'Today the answer is the same.' : 'Today the answer is another.'} {sayOtherwise(ruling)}
      </span>
    </p>
  );
}

const verdictIn = (value: unknown): VerdictWord | undefined => VERDICTS.find((one) => one === value);
