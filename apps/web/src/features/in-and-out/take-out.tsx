import { SHEET_KINDS } from '../../../../../libs/sheets';
import { address } from '../../lib/api-client';
import { KIND_WORDS } from './kind-words';
import classes from './in-and-out.module.css';

/** Everything of the shop as spreadsheets, to keep, to count, or to bring in again. */
export function TakeOut() {
  return (
    <section aria-labelledby="take-out" className={classes.part}>
      <h2 id="take-out">Take spreadsheets out</h2>
      <p className="soft">
        Bringing one in again changes nothing. They hold owners&rsquo; names and addresses: keep them as you keep the
        books.
      </p>
      <ul className={classes.exports}>
        {SHEET_KINDS.map((kind) => (
          <li key={kind}>
            <span>{KIND_WORDS[kind].title}</span>
            <a
              href={address(`/sheets/exports/${kind}`, { format: 'xlsx' })}
              download
              aria-label={`${KIND_WORDS[kind].title} as a workbook`}
            >
              Workbook
            </a>
            <a href={address(`/sheets/exports/${kind}`)} download aria-label={`${KIND_WORDS[kind].title} as CSV`}>
              CSV
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
