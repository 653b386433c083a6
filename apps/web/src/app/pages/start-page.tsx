import { useQuery } from '@tanstack/react-query';
import { Navigate } from '@tanstack/react-router';
import { sessionQuery } from '../../lib/session';

/** Where a day begins: a technician at the own bench, everybody else at the board. */
export function StartPage() {
  const { data: person } = useQuery(sessionQuery);
  return <Navigate to={person?.role === 'technician' ? '/my-bench' : '/board'} replace />;
}
