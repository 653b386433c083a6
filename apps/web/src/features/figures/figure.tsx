import { useMediaQuery } from '@mantine/hooks';
import { lazy, Suspense, useId, type ReactNode } from 'react';
import { EmptyView } from '../../components/empty-view';
import { LoadingView } from '../../components/loading-view';
import type { BarPicture } from './bars';
import classes from './figures.module.css';

/** Fetched when the first picture is drawn; the tables do not wait for it. */
const BarChart = lazy(() => import('./bar-chart'));

interface FigureProps {
  title: string;
  /** what is counted, in one sentence */
  meaning: string;
  picture: BarPicture;
  /** said where there is nothing to count */
  none: string;
  /** headings of the table; the first is of the row's name */
  heads: readonly string[];
  rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
}

/** A figure: what it counts, a picture, and the same as a table. */
export function Figure({ title, meaning, picture, none, heads, rows }: FigureProps) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={classes.figure}>
      <h2 id={id}>{title}</h2>
      <p className={classes.meaning}>{meaning}</p>
      {rows.length === 0 ? (
        <EmptyView title={none} />
      ) : (
        <div className={classes.both}>
          <Suspense fallback={<LoadingView what="the picture" />}>
            <BarChart picture={picture} />
          </Suspense>
          <Table title={title} heads={heads} rows={rows} />
        </div>
      )}
    </section>
  );
}

function Table({ title, heads, rows }: Pick<FigureProps, 'title' | 'heads' | 'rows'>) {
  const wide = useMediaQuery('(min-width: 1000px)', true, { getInitialValueInEffect: false });
  return (
    <details open={wide} className={classes.table}>
      <summary>
        The same as a table<span className="sr-only">: {title}</span>
      </summary>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, cells }) => (
            <tr key={key}>
              {cells.map((cell, at) =>
                at === 0 ? (
                  <th key={heads[at]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={heads[at]}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
