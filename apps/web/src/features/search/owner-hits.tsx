import { useQuery, queryOptions } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { owners } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';
import classes from './search-hits-list.module.css';

const ownersFound = (q: string) =>
  queryOptions({
    queryKey: ['owners', q.trim()],
    enabled: q.trim().length >= 2,
    queryFn: () => request(owners, 'GET', '/owners', { query: { q: q.trim() } }),
  });

/** The owners a search found, each leading to what is kept of the person; nothing where there are none. */
export function OwnerHits({ q }: { q: string }) {
  const found = useQuery(ownersFound(q)).data ?? [];
  if (found.length === 0) return null;
  return (
    <>
      <h2>Owners</h2>
      <ul className={classes.hits}>
        {found.map(({ id, name, phone }) => (
          <li key={id}>
            <Link to="/owners/$id" params={{ id }} className={classes.hit}>
              <strong>{name}</strong>
              <span className="num">{phone}</span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
