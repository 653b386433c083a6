import type { BulletinDetail, SaveBulletin } from '../../../../../libs/contracts';
import { todayText } from '../../lib/say';
import { EMPTY_RULE, typedFromWire, type TypedRule } from './typed-rule';

/** A paper as it stands in the form. */
export interface EditorState {
  head: Omit<SaveBulletin, 'draft'>;
  rules: TypedRule[];
  ends: { rule: string; on: string }[];
}

/** An empty paper, received today. */
export function newPaper(): EditorState {
  const head: EditorState['head'] = {
    kind: 'service-bulletin',
    publisher: '',
    number: '',
    title: '',
    summary: '',
    issued: todayText(),
    effective: null,
    received: todayText(),
  };
  return { head, rules: [], ends: [] };
}

/** A draft as the form shows it. */
export function paperFrom(bulletin: BulletinDetail): EditorState {
  const { kind, publisher, number, title, summary, issued, effective, received } = bulletin;
  const rules = (bulletin.draft?.opens ?? []).map(typedFromWire).filter((rule) => rule !== null);
  return {
    head: { kind, publisher, number, title, summary, issued, effective, received },
    rules,
    ends: bulletin.draft?.ends ?? [],
  };
}

/** A key for a new rule of the paper that no other rule of it has. */
export function nextRuleKey(state: EditorState): string {
  const stem =
    state.head.number
      .trim()
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-') || 'rule';
  const taken = new Set(state.rules.map(({ key }) => key));
  let number = state.rules.length + 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

/** The paper with one more rule, of the line of the last one. */
export function withNewRule(state: EditorState, given: Partial<TypedRule> = {}): EditorState {
  const line = state.rules.at(-1)?.line ?? '';
  return { ...state, rules: [...state.rules, { ...EMPTY_RULE, line, ...given, key: nextRuleKey(state) }] };
}
