import type { PartRef, ShelfWord, TicketView } from '../../../../../libs/contracts';
import { sayDayText } from '../../lib/say';
import classes from './parts-panel.module.css';

/** What the shelf says of the parts that may go in here: how many are free and where they lie. */
export function ShelfLine({ ticket, parts }: { ticket: TicketView; parts: readonly PartRef[] }) {
  if (!ticket.shelf.kept || ticket.closedAt !== null || parts.length === 0) return null;
  return (
    <p className={classes.shelf}>
      On the shelf:{' '}
      {parts.map(({ key, number }, index) => (
        <span key={key}>
          {index > 0 ? '; ' : ''}
          <span className="num">{number}</span> {shelfWords(ticket.shelf.parts.find((one) => one.key === key))}
        </span>
      ))}
    </p>
  );
}

function shelfWords(word: ShelfWord | undefined): string {
  if (!word) return 'is not kept';
  const bin = word.bin === '' ? '' : `, bin ${word.bin}`;
  if (word.free > 0) return `${word.free} free${bin}`;
  const coming = word.coming === 0 ? '' : `, ${word.coming} on the way`;
  const when = word.expectedOn === null ? '' : ` for ${sayDayText(word.expectedOn)}`;
  return `none free${word.onHand > 0 ? `, ${word.onHand} held for other work` : ''}${coming}${when}`;
}
