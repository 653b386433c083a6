import type { Draw } from './draw';
import type { House } from './house';

/** What one kind of fault came to. */
export interface FaultReport {
  /** How often the fault was brought about. */
  readonly dose: number;
  /** How often it truly struck in the midst of work. */
  readonly hits: number;
  /** What did not hold, a sentence each; empty is what it must be. */
  readonly problems: readonly string[];
  /** Figures worth reading beside the result. */
  readonly note: string;
}

export interface FaultPlan {
  readonly house: House;
  /** How often, before it was scaled. */
  readonly dose: number;
  /** How long something that is stopped stays away. */
  readonly awayMs: number;
  readonly draw: Draw;
  /** How long a recheck may take to end once nothing disturbs it any more. */
  readonly patienceMs: number;
  /** Whether times are held to their figures; a test among many others on the machine only looks at what came out. */
  readonly timed: boolean;
}

export interface Fault {
  readonly id: string;
  readonly title: string;
  /** The whole dose, and that of the short form. */
  readonly full: number;
  readonly short: number;
  run(plan: FaultPlan, tally: Tally): Promise<void>;
}

/** Collects what one fault does and finds; can be looked at while it goes on. */
export class Tally {
  dose = 0;
  hits = 0;
  /** What `dose` will come to; null where nobody can know before. */
  whole: number | null = null;
  /** Figures worth reading while it goes on. */
  soFar: () => string = () => '';
  readonly problems: string[] = [];
  private readonly notes: string[] = [];

  /** Counts one fault, and whether work was under way. */
  struck(inMidWork: boolean): void {
    this.dose++;
    if (inMidWork) this.hits++;
  }

  check(holds: boolean, sentence: string): void {
    if (!holds) this.problems.push(sentence);
  }

  say(note: string): void {
    this.notes.push(note);
  }

  report(): FaultReport {
    const { dose, hits, notes } = this;
    const problems = [...this.problems];
    if (dose > 0 && hits < 0.9 * dose)
      problems.push(`only ${hits} of ${dose} struck in mid-work: that proves too little`);
    return { dose, hits, problems, note: notes.join('; ') };
  }
}
