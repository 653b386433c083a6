import type { Calendar } from '../calendar';
import { paper, part, says, type LineRoom, type PositionRoom } from './line-room';

/** A walk-behind sickle bar cutter. */
export function sedgeline(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'SEDGELINE',
    maker: 'QUILMO',
    name: 'Sedgeline sickle bar cutter',
    kind: 'sickle bar cutter',
    models: [
      { number: 'SL90', name: 'Sedgeline 90' },
      { number: 'SL110', name: 'Sedgeline 110' },
    ],
    options: [{ code: 'rough-bar', name: 'Bar for rough ground' }],
    producedFrom: ago(16, 4),
    producedUntil: ago(2, 9),
    sketch:
      'M4 52 L70 52 L70 56 L4 56 Z M8 52 L12 46 L16 52 M24 52 L28 46 L32 52 M40 52 L44 46 L48 52 M46 30 L68 30 L70 46 L44 46 Z M66 30 L92 12 M58 46 a8 8 0 1 0 0.1 0',
    papers: {
      manual: paper('owners-manual', 'SL-B-060', 'Sedgeline handbook', ago(16, 4)),
      list: paper('parts-list', 'SL-T-110', 'Sedgeline parts list', ago(11, 3, 15)),
      revised: paper('revised-parts-list', 'SL-T-112', 'Sedgeline parts list, issue 3', ago(6, 11, 2)),
      twin: paper('revised-parts-list', 'SL-T-112X', 'Sedgeline parts list, export edition', ago(6, 11, 2), {
        receivedAfter: 30,
      }),
      advice: paper('makers-advice', 'mail of May', 'Quilmoor on the knife head', ago(3, 5, 27), { receivedAfter: 1 }),
    },
    positions: [...bar(calendar), ...knifeHead(calendar), ...drive(calendar)],
  };
}

function bar({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'KN-SECT',
      name: 'Knife section',
      assembly: 'Bar',
      places: ['outer', 'middle', 'inner'],
      at: [28, 50],
      joint: null,
      parts: [part('G410-007', 'Knife section, smooth', 260), part('G410-009', 'Knife section, toothed', 310)],
      rules: [
        says('manual', 'G410-007'),
        says('list', 'G410-007', { notFitted: 'rough-bar', allows: ['G410-009'] }),
        says('list', 'G410-009', { fitted: 'rough-bar' }),
      ],
    },
    {
      code: 'GUARD',
      name: 'Guard finger',
      assembly: 'Bar',
      places: ['outer', 'inner'],
      at: [12, 54],
      joint: null,
      parts: [part('G411-020', 'Guard finger', 890), part('G411-020A', 'Guard finger, forged', 1150)],
      rules: [
        says('manual', 'G411-020'),
        says('list', 'G411-020', { allows: ['G411-020A'] }),
        says('revised', 'G411-020A', { built: [ago(7, 1), null], replaces: [2] }),
      ],
    },
  ];
}

function knifeHead({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'HD-BALL',
      name: 'Knife head ball',
      assembly: 'Bar',
      places: ['ball'],
      at: [50, 50],
      joint: null,
      parts: [part('G412-100', 'Knife head ball 20', 1390), part('G412-104', 'Knife head ball 22', 1450)],
      rules: [
        says('list', 'G412-100'),
        says('revised', 'G412-104', { built: [ago(8, 2), ago(5, 6)], replaces: [1] }),
        says('twin', 'G412-100', { built: [ago(8, 2), ago(5, 6)] }),
        says('advice', 'G412-104', {
          built: [ago(8, 2), ago(6, 6)],
          bars: [['G412-100', 'does-not-fit', 'rattles in the wider socket']],
          action: 'next-service',
        }),
      ],
    },
    {
      code: 'WEAR-PL',
      name: 'Wear plate',
      assembly: 'Bar',
      places: ['outer', 'inner'],
      at: [38, 54],
      joint: null,
      parts: [part('G413-050', 'Wear plate', 420), part('G413-052', 'Wear plate, long', 460)],
      rules: [
        says('list', 'G413-050', { models: ['SL90'] }),
        says('list', 'G413-052', { models: ['SL110'] }),
        says('manual', 'G413-050'),
      ],
    },
  ];
}

function drive({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'CRK-BRG',
      name: 'Crank bearing',
      assembly: 'Drive',
      places: ['bearing'],
      at: [58, 44],
      joint: null,
      parts: [
        part('G420-301', 'Bearing, crank, brass cage', 2490),
        part('G420-303', 'Bearing, crank, steel cage', 2190),
      ],
      rules: [
        says('manual', 'G420-301'),
        says('list', 'G420-301', { built: [null, ago(12, 5)] }),
        says('list', 'G420-303', {
          built: [ago(12, 5), null],
          bars: [['G420-301', 'does-not-fit', 'two millimetres too wide']],
        }),
      ],
    },
    {
      code: 'CRK-BLT',
      name: 'Crank belt',
      assembly: 'Drive',
      places: ['belt'],
      at: [56, 34],
      joint: null,
      parts: [part('G421-090', 'Belt, crank', 1340), part('G421-092', 'Belt, crank, double', 1520)],
      rules: [
        says('manual', 'G421-090'),
        says('list', 'G421-090', { endedBy: 'revised' }),
        says('revised', 'G421-092', { allows: ['G421-090'] }),
      ],
    },
    {
      code: 'WHL-PAWL',
      name: 'Wheel pawl',
      assembly: 'Drive',
      places: ['left', 'right'],
      at: [60, 52],
      joint: null,
      parts: [part('G422-011', 'Pawl, cast', 540), part('G422-011B', 'Pawl, machined', 690)],
      rules: [
        says('list', 'G422-011'),
        says('revised', 'G422-011B', { built: [ago(7, 3), null], action: 'next-service', replaces: [1] }),
        says('twin', 'G422-011B', { built: [ago(7, 3), null] }),
      ],
    },
  ];
}
