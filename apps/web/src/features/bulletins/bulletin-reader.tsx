import type { BulletinDetail } from '../../../../../libs/contracts';
import { SOURCE_WORDS, sayDayText, sayInstant } from '../../lib/say';
import { STATE_WORDS } from './bulletin-words';
import { RuleItem } from './rule-item';
import { Said } from '../../components/said';
import classes from './bulletins.module.css';

/** A paper as it is read: head, summary, the rules it opens and those it ends. */
export function BulletinReader({ bulletin }: { bulletin: BulletinDetail }) {
  return (
    <article className={classes.paper}>
      <p className={classes.meta}>
        {SOURCE_WORDS[bulletin.kind]} <span className="num">{bulletin.number}</span> by {bulletin.publisher}, issued{' '}
        {sayDayText(bulletin.issued)}
        {bulletin.effective ? `, in force from ${sayDayText(bulletin.effective)}` : ''}, received{' '}
        {sayDayText(bulletin.received)}. <strong>{STATE_WORDS[bulletin.state]}</strong>
        {bulletin.publishedAt ? ` ${sayInstant(bulletin.publishedAt)}` : ''}.
      </p>
      {bulletin.withdrawnWhy ? <p>{`Withdrawn because: ${bulletin.withdrawnWhy}`}</p> : null}
      {bulletin.summary ? <p className={classes.summary}>{bulletin.summary}</p> : null}
      <h2>{bulletin.state === 'draft' ? 'Rules it would open' : 'Rules it opened'}</h2>
      {bulletin.opens.length === 0 ? <p className="soft">None.</p> : null}
      <ul>
        {bulletin.opens.map((rule) => (
          <RuleItem key={`${rule.key} ${rule.version}`} rule={rule} />
        ))}
      </ul>
      {bulletin.ends.length > 0 ? (
        <h2>{bulletin.state === 'draft' ? 'Rules it would end' : 'Rules it ended'}</h2>
      ) : null}
      <ul>
        {bulletin.ends.map(({ key, rule, on }) => (
          <li key={key} className={classes.rule}>
            From {sayDayText(on)}: {rule ? <Said>{rule.sentence}</Said> : <span className="num">{key}</span>}
          </li>
        ))}
      </ul>
    </article>
  );
}
