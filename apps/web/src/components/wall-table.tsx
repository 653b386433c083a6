import { Fragment } from 'react';
import type { PartRef, WallChartView } from '../../../../libs/contracts';
import { saySpanText } from '../lib/say';
import { spanWords } from '../lib/wall-layout';
import { PartNumber } from './part-number';
import { Said } from './said';
import classes from './wall-picture.module.css';

/** What the wall picture shows, in words: built from .. to .. this part, what else is allowed, what never, by which paper. */
export function WallTable({ chart }: { chart: WallChartView }) {
  return (
    <table className={classes.facts}>
      <caption className="sr-only">Parts by position and build date on {chart.line.name}</caption>
      <thead>
        <tr>
          <th scope="col">Position</th>
          <th scope="col">Built</th>
          <th scope="col">Part</th>
          <th scope="col">Allowed too</th>
          <th scope="col">Never</th>
          <th scope="col">Paper</th>
        </tr>
      </thead>
      <tbody>
        {chart.rows.flatMap((row) =>
          row.spans.map((span) => (
            <tr key={`${row.position} ${row.when} ${span.from}`}>
              <td>
                {row.positionName}
                {row.when ? (
                  <span className="soft">
                    {' '}
                    <Said>{row.when}</Said>
                  </span>
                ) : null}
              </td>
              <td>{saySpanText(span)}</td>
              <td className={span.outcome === 'decided' ? classes.part : undefined}>{spanWords(span)}</td>
              <td>{span.required || span.outcome === 'disputed' ? <Numbers parts={span.allowed} /> : null}</td>
              <td>
                <Numbers parts={span.barred} />
              </td>
              <td>
                <Said>{span.papers.join('; ')}</Said>
              </td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}

function Numbers({ parts }: { parts: readonly PartRef[] }) {
  return parts.map(({ key, number }, i) => (
    <Fragment key={key}>
      {i === 0 ? null : ', '}
      <PartNumber number={number} />
    </Fragment>
  ));
}
