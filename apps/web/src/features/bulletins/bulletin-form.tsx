import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState, type FormEvent } from 'react';
import { ActProblem } from '../../components/act-problem';
import { linesQuery } from '../../lib/catalogue-queries';
import { useDraft } from '../../lib/draft';
import { withNewRule, type EditorState } from './editor-state';
import { EndsFields } from './ends-fields';
import { HeadFields } from './head-fields';
import { PasteDialog } from './paste-dialog';
import { RuleForm } from './rule-form';
import { useSaveBulletin } from './save-bulletin';
import { ruleNeeds, type TypedRule } from './typed-rule';
import classes from './bulletins.module.css';

interface BulletinFormProps {
  /** null writes a new paper down */
  saved: { id: number; version: number } | null;
  first: EditorState;
}

/** Writes a paper down: its head, the rules it opens, those it ends. What is typed survives a reload. */
export function BulletinForm({ saved, first }: BulletinFormProps) {
  const [paper, setPaper, forget] = useDraft(saved ? `bulletin-${saved.id}-${saved.version}` : 'bulletin', first);
  const [pasting, setPasting] = useState(false);
  const lines = useQuery(linesQuery).data ?? [];
  const navigate = useNavigate();
  const save = useSaveBulletin(saved);
  const incomplete = paper.rules.some((rule) => ruleNeeds(rule) !== null);
  const setRule = (index: number, rule: TypedRule | null) =>
    setPaper({ ...paper, rules: paper.rules.flatMap((old, at) => (at !== index ? [old] : rule ? [rule] : [])) });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(paper, {
      onSuccess: ({ id }) => {
        forget();
        void navigate({ to: '/bulletins/$id', params: { id } });
      },
    });
  };
  const takeIn = (rules: Omit<TypedRule, 'key'>[]) => {
    setPaper(rules.reduce<EditorState>((sum, rule) => withNewRule(sum, rule), paper));
    setPasting(false);
  };
  return (
    <form onSubmit={submit}>
      <HeadFields head={paper.head} onChange={(head) => setPaper({ ...paper, head })} />
      {paper.rules.map((rule, index) => (
        <RuleForm
          key={rule.key}
          rule={rule}
          lines={lines}
          onChange={(changed) => setRule(index, changed)}
          onRemove={() => setRule(index, null)}
        />
      ))}
      <EndsFields ends={paper.ends} onChange={(ends) => setPaper({ ...paper, ends })} />
      <div className={classes.acts}>
        <Button onClick={() => setPaper(withNewRule(paper))}>Add a rule</Button>
        <Button onClick={() => setPasting(true)}>Paste from a table</Button>
        <Button
          onClick={() =>
            setPaper({ ...paper, ends: [...paper.ends, { rule: '', on: paper.head.effective ?? paper.head.issued }] })
          }
        >
          End a rule
        </Button>
        <Button onClick={forget}>Start over</Button>
        <Button type="submit" variant="filled" loading={save.isPending} disabled={incomplete}>
          Keep it, not published yet
        </Button>
      </div>
      <ActProblem error={save.error} />
      {pasting ? <PasteDialog lines={lines} onClose={() => setPasting(false)} onRules={takeIn} /> : null}
    </form>
  );
}
