import type { EstimateRevision } from '../../../../../libs/contracts';
import { sayMinutes } from '../../lib/minutes';
import { sayMoney } from '../../lib/say';
import classes from './labour-panel.module.css';

type Estimate = Pick<EstimateRevision, 'lines' | 'tax' | 'netMinor' | 'taxMinor' | 'totalMinor' | 'currency'>;

/** An estimate line by line, its tax, and what the owner is asked to pay. */
export function EstimateTable({ estimate, caption }: { estimate: Estimate; caption: string }) {
  const { lines, tax, netMinor, taxMinor, totalMinor, currency } = estimate;
  const percent = `${tax.name} ${tax.basisPoints / 100} %`;
  const row = (words: string, minor: number) => (
    <tr>
      <th scope="row" colSpan={2}>
        {words}
      </th>
      <td className={classes.money}>{sayMoney(minor, currency)}</td>
    </tr>
  );
  return (
    <table className={classes.estimate}>
      <caption className="sr-only">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">How much</th>
          <th scope="col" className={classes.money}>
            Amount
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line, index) => (
          <tr key={index}>
            <td>
              {line.part ? <span className="num">{line.part}</span> : null} {line.what}
              {line.kind === 'spare' ? <span className="soft"> (spare)</span> : null}
            </td>
            <td>{line.kind === 'labour' ? sayMinutes(line.minutes) : line.part ? `${line.quantity} ×` : ''}</td>
            <td className={classes.money}>{sayMoney(line.amountMinor, currency)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        {tax.basisPoints > 0 && !tax.included ? row('Without tax', netMinor) : null}
        {tax.basisPoints > 0 ? row(tax.included ? `Of which ${percent}` : percent, taxMinor) : null}
        {row('Together', totalMinor)}
      </tfoot>
    </table>
  );
}
