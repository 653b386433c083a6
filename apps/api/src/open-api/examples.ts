import recorded from './examples.json';

/** What was asked and answered once, as the contract spec recorded it. */
export interface Example {
  readonly parameters?: Readonly<Record<string, unknown>>;
  readonly body?: unknown;
  readonly answer?: unknown;
}

/** Examples by the id of their operation. */
export type Examples = Readonly<Record<string, Example>>;

export const recordedExamples: Examples = recorded;
