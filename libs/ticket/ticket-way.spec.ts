import * as fc from 'fast-check';
import {
  mayCancel,
  mayHold,
  mayMove,
  mayResume,
  missingForStage,
  nextOf,
  STAGES,
  stageBefore,
  type Destination,
  type Stage,
  type TicketFacts,
} from './index';

/** The ticket under test: what the library is asked about, changed only by what the library permits. */
interface Ticket {
  stage: Stage;
  onHold: boolean;
  closed: TicketFacts['closed'];
  /** Which gates are open, by stage. */
  gates: Record<Stage, boolean>;
}

/** The model: the stage as a number from 0, counted by rules of its own. */
interface Model {
  at: number;
  held: boolean;
  gone: boolean;
  gates: boolean[];
}

/** Facts with exactly the given gates open: each stage's gate has one point that can be left out on its own. */
function factsOf({ stage, onHold, closed, gates }: Ticket): TicketFacts {
  const place = { name: 'left', leftOut: false, condition: null, verdict: null, accepted: false };
  const fit = { position: 'B', part: 'X', purpose: 'fit' as const, exception: false };
  return {
    stage,
    onHold,
    closed,
    lineKnown: gates.intake,
    serialRecorded: true,
    positions: [
      { code: 'A', name: 'A', rulingSettled: true, places: [{ ...place, recorded: gates.inspection }] },
      { code: 'B', name: 'B', rulingSettled: true, places: [{ ...place, recorded: true }] },
    ],
    picks: [
      { ...fit, state: 'fitted', verdict: gates['parts-selection'] ? 'right' : 'wrong' },
      { ...fit, state: gates.repair ? 'fitted' : 'picked', verdict: 'right' },
    ],
    money: { totalMinor: 0, authorisedMinor: null, currency: 'EUR' },
    flags: gates.handover ? [] : [{ position: 'A', placeName: 'A, left', state: 'open' }],
    safetyTicked: [
      'makers-papers',
      'engine-stopped',
      'key-or-lead-off',
      'at-rest',
      'energy-released',
      'never-stronger',
    ],
  };
}

class Move implements fc.Command<Model, Ticket> {
  constructor(
    readonly to: Destination,
    readonly reason: string | null,
  ) {}
  check = () => true;
  run(model: Model, ticket: Ticket): void {
    const target = this.to === 'handed-over' ? STAGES.length : STAGES.indexOf(this.to);
    const forward = target === model.at + 1 && model.gates[model.at]!;
    const back = target === model.at - 1 && (this.reason ?? '').trim() !== '';
    const expected = !model.gone && !model.held && (forward || back);
    const answer = mayMove(factsOf(ticket), this.to, this.reason);
    expect(answer === null).toBe(expected);
    if (answer !== null) return;
    if (this.to === 'handed-over') {
      ticket.closed = 'handed-over';
      model.gone = true;
    } else {
      ticket.stage = this.to;
      model.at = target;
    }
  }
  toString = () => `move(${this.to}, ${JSON.stringify(this.reason)})`;
}

class Hold implements fc.Command<Model, Ticket> {
  constructor(readonly on: boolean) {}
  check = () => true;
  run(model: Model, ticket: Ticket): void {
    const answer = this.on ? mayHold(factsOf(ticket)) : mayResume(factsOf(ticket));
    expect(answer === null).toBe(!model.gone && model.held !== this.on);
    if (answer !== null) return;
    ticket.onHold = this.on;
    model.held = this.on;
  }
  toString = () => (this.on ? 'hold' : 'resume');
}

class Cancel implements fc.Command<Model, Ticket> {
  check = () => true;
  run(model: Model, ticket: Ticket): void {
    const answer = mayCancel(factsOf(ticket));
    expect(answer === null).toBe(!model.gone);
    if (answer !== null) return;
    ticket.closed = 'cancelled';
    model.gone = true;
  }
  toString = () => 'cancel';
}

class SwitchGate implements fc.Command<Model, Ticket> {
  constructor(
    readonly stage: Stage,
    readonly open: boolean,
  ) {}
  check = () => true;
  run(model: Model, ticket: Ticket): void {
    ticket.gates[this.stage] = this.open;
    model.gates[STAGES.indexOf(this.stage)] = this.open;
    expect(missingForStage(this.stage, factsOf(ticket)).length === 0).toBe(this.open);
  }
  toString = () => `${this.stage} ${this.open ? 'opens' : 'closes'}`;
}

const commands = fc.commands(
  [
    fc
      .tuple(fc.constantFrom<Destination>(...STAGES, 'handed-over'), fc.constantFrom(null, '', '  ', 'a good reason'))
      .map(([to, reason]) => new Move(to, reason)),
    fc.boolean().map((on) => new Hold(on)),
    fc.tuple(fc.constantFrom(...STAGES), fc.boolean()).map(([stage, open]) => new SwitchGate(stage, open)),
    fc.constant(new Cancel()),
  ],
  { maxCommands: 60 },
);

describe("a ticket's way", () => {
  it('is that of a model which counts stages, whatever is tried on it and in whatever order', () => {
    fc.assert(
      fc.property(commands, (tried) => {
        const gates = { intake: true, inspection: true, 'parts-selection': true, repair: true, handover: true };
        const setup = () => ({
          model: { at: 0, held: false, gone: false, gates: Array<boolean>(STAGES.length).fill(true) },
          real: { stage: 'intake', onHold: false, closed: null, gates: { ...gates } } as Ticket,
        });
        fc.modelRun(setup, tried);
      }),
      { numRuns: 500 },
    );
  });

  it('knows one stage before and one after each', () => {
    expect(STAGES.map(nextOf)).toEqual([...STAGES.slice(1), 'handed-over']);
    expect(STAGES.map(stageBefore)).toEqual([null, ...STAGES.slice(0, -1)]);
  });

  it('is refused at a closed gate with every point still open', () => {
    const gates = { intake: true, inspection: false, 'parts-selection': true, repair: true, handover: true };
    const ticket: Ticket = { stage: 'inspection', onHold: false, closed: null, gates };
    expect(mayMove(factsOf(ticket), 'parts-selection', null)).toEqual({
      code: 'gate-closed',
      sentence: 'Before parts selection, one point is still open.',
      missing: [
        {
          code: 'place-not-looked-at',
          sentence: 'A: record what is in left, or leave it out with a reason.',
          position: 'A',
        },
      ],
    });
  });
});
