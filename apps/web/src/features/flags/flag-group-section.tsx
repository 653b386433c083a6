import { Button } from '@mantine/core';
import { Said } from '../../components/said';
import { count } from '../../lib/say';
import type { FlagGroup } from './group-flags';
import { FlagRow } from './flag-row';
import type { useDesk } from './use-desk';
import classes from './flags.module.css';

interface FlagGroupSectionProps {
  group: FlagGroup;
  desk: ReturnType<typeof useDesk>;
  mayDecide: boolean;
}

/** Equals under one heading, which can be ticked together. */
export function FlagGroupSection({ group, desk, mayDecide }: FlagGroupSectionProps) {
  const ids = group.flags.map(({ id }) => id);
  const all = ids.every(desk.isTicked);
  return (
    <section className={classes.group} aria-label={group.title}>
      <div className={classes.head}>
        <h2>
          <Said>{group.title}</Said>
        </h2>
        <span className="soft">{count(ids.length, 'install')}</span>
        {mayDecide && ids.length > 1 ? (
          <Button variant="subtle" px="xs" onClick={() => desk.tick(ids, !all)}>
            {all ? 'Untick these' : 'Tick all of these'}
          </Button>
        ) : null}
      </div>
      <ul>
        {group.flags.map((flag) => (
          <FlagRow
            key={flag.id}
            flag={flag}
            marked={flag.id === desk.marked?.id}
            ticked={desk.isTicked(flag.id)}
            mayDecide={mayDecide}
            onTick={() => desk.tick([flag.id], !desk.isTicked(flag.id))}
            onMark={() => desk.mark(flag.id)}
            onDecide={(decision) => desk.decide(decision, [flag])}
          />
        ))}
      </ul>
    </section>
  );
}
