import { lazy, Suspense, useMemo, useState } from 'react';
import { useHotkeys } from '../../lib/hotkeys';

const KeysDialog = lazy(() => import('./keys-dialog').then((one) => ({ default: one.KeysDialog })));

/** `?` shows the keys; the dialog is fetched when somebody first asks for it. */
export function KeysHelp() {
  const [asked, setAsked] = useState<'never' | 'open' | 'closed'>('never');
  useHotkeys(useMemo(() => ({ '?': () => setAsked('open') }), []));
  if (asked === 'never') return null;
  return (
    <Suspense fallback={null}>
      <KeysDialog open={asked === 'open'} onClose={() => setAsked('closed')} />
    </Suspense>
  );
}
