import type { Calendar } from '../calendar';
import { paper, part, says, type LineRoom, type PositionRoom } from './line-room';

/** A hydraulic log splitter. */
export function stavewright(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'STAVEWRIGHT',
    maker: 'BRAKEN',
    name: 'Stavewright log splitter',
    kind: 'log splitter',
    models: [
      { number: 'SW-22', name: 'Stavewright 22' },
      { number: 'SW-27', name: 'Stavewright 27' },
    ],
    options: [{ code: 'log-lift', name: 'Log lift' }],
    producedFrom: ago(13, 2),
    producedUntil: null,
    sketch:
      'M6 30 L90 30 L90 38 L6 38 Z M12 22 L44 22 L44 30 L12 30 Z M44 25 L62 25 L62 27 M66 18 L72 30 L60 30 Z M26 38 a9 9 0 1 0 0.1 0 M76 38 L84 54',
    papers: {
      manual: paper('owners-manual', 'SW-OM-2', 'Stavewright owner’s manual', ago(13, 2)),
      list: paper('parts-list', 'SW-PL-02', 'Stavewright parts list', ago(10, 6, 2)),
      revised: paper('revised-parts-list', 'SW-PL-03', 'Stavewright parts list, third edition', ago(6, 9, 12)),
      bulletin: paper('service-bulletin', 'SW-SB-05', 'Return filter that bursts in the cold', ago(1, 3, 3), {
        receivedAfter: 12,
      }),
    },
    positions: [...hydraulics(calendar), ...pump(calendar), ...beam(calendar)],
  };
}

function hydraulics({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'HYD-FLT',
      name: 'Return filter',
      assembly: 'Hydraulics',
      places: ['filter'],
      at: [20, 42],
      joint: null,
      parts: [
        part('50-3010', 'Filter, return', 1680),
        part('50-3015', 'Filter, return, high burst', 2150),
        part('50-3011', 'Filter, suction', 1320),
      ],
      rules: [
        says('manual', '50-3010'),
        says('list', '50-3010', { bars: [['50-3011', 'unsafe', 'a suction filter cannot hold the return pressure']] }),
        says('bulletin', '50-3015', {
          built: [ago(6, 8), ago(3, 12)],
          bars: [['50-3010', 'unsafe', 'can burst below -15 °C and spray oil']],
          action: 'stop-use',
          replaces: [2],
        }),
      ],
    },
    {
      code: 'CYL-SEAL',
      name: 'Cylinder seal kit',
      assembly: 'Hydraulics',
      places: ['cylinder'],
      at: [28, 26],
      joint: null,
      parts: [
        part('50-4010', 'Seal kit, 4 inch cylinder', 3490),
        part('50-4012', 'Seal kit, 4 1/2 inch cylinder', 3890),
      ],
      rules: [
        says('list', '50-4010', { models: ['SW-22'] }),
        says('list', '50-4012', { models: ['SW-27'] }),
        says('revised', '50-4012', { models: ['SW-22'], built: [ago(7, 1), null], replaces: [1] }),
      ],
    },
  ];
}

function pump({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'PMP-CPL',
      name: 'Pump coupling insert',
      assembly: 'Hydraulics',
      places: ['insert'],
      at: [14, 34],
      joint: null,
      parts: [part('50-5020', 'Coupling insert, black', 790), part('50-5021', 'Coupling insert, orange', 980)],
      rules: [
        says('manual', '50-5020'),
        says('list', '50-5020'),
        says('revised', '50-5021', { allows: ['50-5020'], replaces: [2] }),
      ],
    },
    {
      code: 'VLV-DET',
      name: 'Valve detent spring',
      assembly: 'Hydraulics',
      places: ['spring'],
      at: [46, 20],
      joint: null,
      parts: [part('50-6102', 'Detent spring, plain', 450), part('50-6104', 'Detent spring, soft', 520)],
      rules: [
        says('list', '50-6102', { built: [null, ago(8, 7)] }),
        says('list', '50-6104', { built: [ago(8, 2), null] }),
        says('revised', '50-6104', { built: [ago(6, 1), null] }),
      ],
    },
  ];
}

function beam({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'WDG-PAD',
      name: 'Slide pad',
      assembly: 'Beam',
      places: ['upper left', 'upper right', 'lower left', 'lower right'],
      at: [62, 32],
      joint: null,
      parts: [part('51-1101', 'Slide pad, cast iron', 640), part('51-1103', 'Slide pad, bronze', 1120)],
      rules: [
        says('manual', '51-1101'),
        says('list', '51-1101', { notFitted: 'log-lift', allows: ['51-1103'] }),
        says('list', '51-1103', { fitted: 'log-lift' }),
      ],
    },
    {
      code: 'WHL-BRG',
      name: 'Wheel bearing',
      assembly: 'Beam',
      places: ['left', 'right'],
      at: [26, 48],
      joint: null,
      parts: [part('51-1210', 'Bearing, wheel', 980), part('51-1210A', 'Bearing, wheel, greased', 1090)],
      rules: [
        says('manual', '51-1210'),
        says('list', '51-1210'),
        says('revised', '51-1210A', { built: [ago(7, 6), null], allows: ['51-1210'] }),
      ],
    },
  ];
}
