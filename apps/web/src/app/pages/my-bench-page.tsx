import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { LoadBar } from '../../components/load-bar';
import { QueryView } from '../../components/query-view';
import { BenchChoice } from '../../features/my-bench/bench-choice';
import { BenchJobs } from '../../features/my-bench/bench-jobs';
import { myBenchQuery } from '../../features/my-bench/my-bench-query';
import classes from './my-bench-page.module.css';

/** A technician's first screen: what is on the bench, in which order, and what each ticket still lacks. */
export function MyBenchPage() {
  const mine = useQuery(myBenchQuery);
  return (
    <QueryView query={mine} what="your bench">
      {(data) => (
        <>
          <div className={classes.head}>
            <h1>{data.bench ? `${data.bench.code} · ${data.bench.name}` : 'My bench'}</h1>
            <BenchChoice mine={data} />
            <Link to="/benches">All benches</Link>
            <Button component={Link} to="/new-ticket" variant="filled">
              Take a unit in
            </Button>
          </div>
          {data.load ? <LoadBar load={data.load} /> : null}
          {data.bench ? (
            <BenchJobs mine={data} />
          ) : (
            <EmptyView title="No bench chosen yet">
              <p>Say at which bench you work; its list is then the first thing you see.</p>
            </EmptyView>
          )}
        </>
      )}
    </QueryView>
  );
}
