import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { tokensQuery, webhooksQuery } from '../../features/programs/programs-query';
import classes from '../../features/programs/programs.module.css';
import { Tokens } from '../../features/programs/tokens';
import { Webhooks } from '../../features/programs/webhooks';
import { useMay } from '../../lib/session';

/** How other programs ask here, and how they are told. */
export function ProgramsPage() {
  const mayLetIn = useMay('manage-tokens');
  const mayTell = useMay('manage-webhooks');
  return (
    <>
      <p>
        <Link to="/shop">Shop</Link>
      </p>
      <h1>Other programs</h1>
      {mayLetIn ? <LetIn /> : null}
      {mayTell ? <Tell /> : null}
      {mayLetIn || mayTell ? null : (
        <EmptyView title="A manager lets programs in">
          <p>A program acts in somebody’s name, so a manager or an administrator makes its token.</p>
        </EmptyView>
      )}
    </>
  );
}

function LetIn() {
  const tokens = useQuery(tokensQuery);
  return (
    <section aria-labelledby="tokens">
      <h2 id="tokens">Programs that ask here</h2>
      <QueryView query={tokens} what="the tokens">
        {(list) => <Tokens {...list} />}
      </QueryView>
    </section>
  );
}

function Tell() {
  const webhooks = useQuery(webhooksQuery);
  return (
    <section aria-labelledby="webhooks" className={classes.part}>
      <h2 id="webhooks">Programs that are told</h2>
      <QueryView query={webhooks} what="the addresses">
        {(list) => <Webhooks webhooks={list} />}
      </QueryView>
    </section>
  );
}
