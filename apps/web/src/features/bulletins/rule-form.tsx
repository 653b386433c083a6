import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { DayField } from '../../components/day-field';
import type { LineSummary } from '../../../../../libs/contracts';
import type { Action } from '../../../../../libs/fit-rules';
import { OptionFields } from '../../components/option-fields';
import { lineQuery } from '../../lib/catalogue-queries';
import { ACTION_WORDS } from '../../lib/say';
import { BarFields } from './bar-fields';
import { RulePicture } from './rule-picture';
import { TickList } from './tick-list';
import { ruleNeeds, type TypedRule } from './typed-rule';
import classes from './bulletins.module.css';

interface RuleFormProps {
  rule: TypedRule;
  lines: readonly LineSummary[];
  onChange: (rule: TypedRule) => void;
  onRemove: () => void;
}

/** One fit rule: where, for which build dates, which part, and what about units that are out already. */
export function RuleForm({ rule, lines, onChange, onRemove }: RuleFormProps) {
  const line = useQuery(lineQuery(rule.line));
  const set = (change: Partial<TypedRule>) => onChange({ ...rule, ...change });
  const needs = ruleNeeds(rule);
  return (
    <fieldset className={classes.ruleForm}>
      <legend>
        Rule <span className="num">{rule.key}</span>
      </legend>
      <NativeSelect
        label="Product line"
        value={rule.line}
        onChange={(event) =>
          set({ line: event.currentTarget.value, positions: [], models: [], options: {}, replaces: [] })
        }
      >
        <option value="">Pick the line</option>
        {lines.map(({ code, name, maker }) => (
          <option key={code} value={code}>{`${maker.name} ${name}`}</option>
        ))}
      </NativeSelect>
      {line.data ? (
        <>
          <TickList
            title="Positions"
            choices={line.data.positions.map(({ code, name }) => ({ value: code, label: name }))}
            ticked={rule.positions}
            onTick={(positions) => set({ positions })}
          />
          <TickList
            title="Models (none ticked: every model)"
            choices={line.data.models.map(({ number }) => ({ value: number, label: number }))}
            ticked={rule.models}
            onTick={(models) => set({ models })}
          />
          <div className={classes.fields}>
            <OptionFields options={line.data.options} value={rule.options} onChange={(options) => set({ options })} />
          </div>
        </>
      ) : null}
      <SpanAndParts rule={rule} set={set} />
      <BarFields barred={rule.barred} onChange={(barred) => set({ barred })} />
      {rule.line && rule.positions.length > 0 ? (
        <RulePicture rule={rule} onReplaces={(replaces) => set({ replaces })} />
      ) : null}
      <div className={classes.acts}>
        {needs ? <span role="status">{needs}</span> : null}
        <Button onClick={onRemove}>Take this rule out</Button>
      </div>
    </fieldset>
  );
}

function SpanAndParts({ rule, set }: { rule: TypedRule; set: (change: Partial<TypedRule>) => void }) {
  return (
    <div className={classes.fields}>
      <DayField
        label="Built from (first day)"

        value={rule.builtFirst}
        onChange={(day) => set({ builtFirst: day })}
      />
      <DayField
        label="Built until (last day)"

        value={rule.builtLast}
        onChange={(day) => set({ builtLast: day })}
      />
      <TextInput
        label="Required part"
        className={classes.numbers}
        value={rule.required}
        onChange={(event) => set({ required: event.currentTarget.value })}
      />
      <TextInput
        label="Allowed too"
        description="Several: part them by commas."
        className={classes.numbers}
        value={rule.allowed}
        onChange={(event) => set({ allowed: event.currentTarget.value })}
      />
      <NativeSelect
        label="Units that are already out"
        value={rule.action}
        onChange={(event) => set({ action: event.currentTarget.value as Action })}
        data={Object.entries(ACTION_WORDS).map(([value, label]) => ({ value, label }))}
      />
    </div>
  );
}
