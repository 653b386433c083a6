import type { SheetView } from '../../../../../libs/contracts';
import { address } from '../../lib/api-client';
import { count } from '../../lib/say';
import classes from './in-and-out.module.css';

const SHOWN = 50;

/** Every problem by row and column; all of them in the list to save. */
export function RejectedRows({ sheet }: { sheet: SheetView }) {
  const { rejected } = sheet.outcome!;
  if (rejected === 0) return null;
  const shown = sheet.rejected.slice(0, SHOWN);
  return (
    <>
      <h3>{`${count(rejected, 'row')} cannot go in as they are`}</h3>
      <p>
        <a href={address(`/sheets/${sheet.id}/rejected`)} download>
          Save all of them, each with why
        </a>
        {rejected > shown.length ? `. Here are the first ${shown.length}:` : ':'}
      </p>
      {/* Focusable, so that keys can move it where the list is longer than its box. */}
      <div className={classes.problems} role="region" aria-label="Rejected rows" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Column</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {shown.flatMap(({ row, problems }) =>
              problems.map((one, at) => (
                <tr key={`${row} ${at}`}>
                  <th scope="row">{row}</th>
                  <td>{one.column === null ? 'the row' : `${one.column}: ${one.heading ?? ''}`}</td>
                  <td>{one.says}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </div>
    </>
  );
}
