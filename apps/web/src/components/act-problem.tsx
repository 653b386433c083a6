import { ApiProblem, isStale, sentenceOf } from '../lib/problem';
import classes from './act-problem.module.css';

/** Why the last act was refused, beside the thing that was pressed. */
export function ActProblem({ error }: { error: unknown }) {
  if (!error) return null;
  const missing = error instanceof ApiProblem ? (error.problem.missing ?? []) : [];
  return (
    <div className={classes.problem} role="alert">
      <p>
        {isStale(error)
          ? 'Someone else changed this a moment ago. The page now shows the present state; look, and try again.'
          : sentenceOf(error)}
      </p>
      {missing.length > 0 ? (
        <ul>
          {missing.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
