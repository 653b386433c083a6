import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { ownersQuery } from '../../lib/owners-query';
import classes from './search-hits-list.module.css';

/** The owners a search found, each leading to what is kept of the person; nothing where there are none. */
export function OwnerHits({ q }: { q: string }) {
  const found = useQuery(ownersQuery(q)).data ?? [];
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
