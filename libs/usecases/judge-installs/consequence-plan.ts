import type { Verdict } from '../../fit-rules';
import type { FlagReason } from '../ports/ticket-store';
import type { JudgementRecord } from './judgement-record';

/** Names one place of one unit. */
export interface PlaceOfUnit {
  readonly unitId: number;
  readonly positionId: number;
  readonly place: number;
}

export interface VerdictWrite extends PlaceOfUnit {
  readonly ticketId: number;
  readonly partId: number | null;
  readonly from: Verdict | null;
  readonly to: Verdict;
  readonly judgement: JudgementRecord;
}

export interface FlagRaise extends PlaceOfUnit {
  readonly ticketId: number;
  readonly partId: number | null;
  readonly verdict: Verdict;
  /** 1 (look at it) to 5 (stop). */
  readonly severity: number;
  readonly reason: FlagReason;
}

export interface ReasonAdd extends PlaceOfUnit {
  readonly ownerId: number;
  readonly partId: number | null;
  readonly source: string;
  readonly verdict: Verdict;
  readonly action: 'call-back' | 'stop-use';
  readonly detail: { readonly rule: string; readonly required: string | null; readonly sentence: string };
}

export interface NoteAdd extends PlaceOfUnit {
  readonly source: string;
  readonly detail: { readonly rule: string; readonly required: string | null; readonly sentence: string };
}

/** A row that is no longer needed, and why in a sentence. */
export interface Closing {
  readonly id: number;
  readonly why: string;
}

export interface ReasonClosing extends Closing {
  readonly callbackId: number;
  /** The part is gone: the matter is settled. Otherwise the answer changed: the call was not needed after all. */
  readonly mended: boolean;
}

/** Everything that follows from judging some installs. Made without touching the store; written in one go. */
export interface ConsequencePlan {
  /** How many installs were judged. */
  readonly judged: number;
  /** Verdicts, or their grounds, that are no longer what the install says. */
  readonly verdicts: readonly VerdictWrite[];
  /** Installs whose answer stayed, but that are to say under which revision it was looked at. */
  readonly confirmed: readonly PlaceOfUnit[];
  readonly flags: readonly FlagRaise[];
  readonly flagsCleared: readonly Closing[];
  readonly reasons: readonly ReasonAdd[];
  readonly reasonsWithdrawn: readonly ReasonClosing[];
  readonly notes: readonly NoteAdd[];
  readonly notesClosed: readonly Closing[];
}
