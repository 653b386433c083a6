import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { PrintSettingsForm } from '../../features/settings/print-settings-form';
import { BooksDownload } from '../../features/settings/books-download';
import { MailServerForm } from '../../features/settings/mail-server-form';
import { mailServerQuery } from '../../features/settings/mail-server-query';
import { MoneyForm } from '../../features/settings/money-form';
import { moneyQuery } from '../../features/settings/money-query';
import { RetentionForm } from '../../features/settings/retention-form';
import { retentionQuery } from '../../features/settings/retention-query';
import { SettingsForm } from '../../features/settings/settings-form';
import { settingsQuery } from '../../features/settings/settings-query';
import { printSettingsQuery } from '../../lib/print-settings-query';
import { useMay } from '../../lib/session';

/** What the shop settles for itself. */
export function SettingsPage() {
  return (
    <>
      <p>
        <Link to="/shop">What build dates are read by</Link>
      </p>
      <h1>Settings of the shop</h1>
      {useMay('change-settings') ? (
        <Settings />
      ) : (
        <EmptyView title="A manager settles these">
          <p>They change answers for every unit, so a manager or an administrator sets them.</p>
        </EmptyView>
      )}
    </>
  );
}

function Settings() {
  const settings = useQuery(settingsQuery);
  const prints = useQuery(printSettingsQuery);
  const money = useQuery(moneyQuery);
  const mayForget = useMay('manage-personal-data');
  const mayMail = useMay('change-mail-server');
  const mayExport = useMay('export-bookkeeping');
  return (
    <>
      <QueryView query={settings} what="the settings">
        {(data) => <SettingsForm settings={data} />}
      </QueryView>
      <section aria-labelledby="prints" style={{ marginTop: '2.5rem' }}>
        <h2 id="prints">Prints</h2>
        <QueryView query={prints} what="how prints look">
          {(data) => <PrintSettingsForm settings={data} />}
        </QueryView>
      </section>
      <div style={{ marginTop: '2rem' }}>
        <QueryView query={money} what="the money settings">
          {(data) => <MoneyForm money={data} />}
        </QueryView>
        {mayExport ? <BooksDownload /> : null}
      </div>
      {mayMail ? <Mail /> : null}
      {mayForget ? <KeptOwners /> : null}
    </>
  );
}

function Mail() {
  const server = useQuery(mailServerQuery);
  return (
    <div style={{ marginTop: '2rem' }}>
      <QueryView query={server} what="the mail server">
        {(data) => <MailServerForm settled={data} />}
      </QueryView>
    </div>
  );
}

function KeptOwners() {
  const kept = useQuery(retentionQuery());
  return (
    <div style={{ marginTop: '2rem' }}>
      <QueryView query={kept} what="how long owners are kept">
        {(data) => <RetentionForm settled={data} />}
      </QueryView>
    </div>
  );
}
