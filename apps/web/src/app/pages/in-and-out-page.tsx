import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { BringIn } from '../../features/in-and-out/bring-in';
import { RulebookFile } from '../../features/in-and-out/rulebook-file';
import { TakeOut } from '../../features/in-and-out/take-out';
import { useMay } from '../../lib/session';

/** The shop's spreadsheets in, its data out, and the rulebook as one file. */
export function InAndOutPage() {
  const mayBring = useMay('bring-in');
  const mayTake = useMay('take-out');
  return (
    <>
      <p>
        <Link to="/shop">Shop</Link>
      </p>
      <h1>In and out</h1>
      {mayBring ? <BringIn /> : null}
      {mayTake ? <TakeOut /> : null}
      {mayBring && mayTake ? <RulebookFile /> : null}
      {mayBring || mayTake ? null : (
        <EmptyView title="A manager does this">
          <p>
            Spreadsheets hold everything there is, so a manager or an administrator brings them in and takes them out.
          </p>
        </EmptyView>
      )}
    </>
  );
}
