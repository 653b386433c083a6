import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A towed rotary brush cutter. */
export function fallowsweep(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'FALLOWSWEEP',
    maker: 'TARNVE',
    name: 'Fallowsweep brush cutter',
    kind: 'brush cutter',
    models: [
      { number: 'FS 5', name: 'Fallowsweep 5' },
      { number: 'FS 6', name: 'Fallowsweep 6' },
    ],
    options: [{ code: 'slip-clutch', name: 'Slip clutch' }],
    producedFrom: ago(13, 6),
    producedUntil: null,
    sketch:
      'M10 30 L66 30 L70 42 L6 42 Z M38 30 L38 20 L46 20 L46 30 M66 34 L94 24 M24 42 a16 4 0 1 0 28 0 M66 42 a7 7 0 1 0 0.1 0',
    papers: {
      manual: paper('owners-manual', 'FS-BA-3', 'Fallowsweep operating manual', ago(13, 6)),
      list: paper('parts-list', 'FS-EL-02', 'Fallowsweep parts list', ago(10, 3, 19)),
      revised: paper('revised-parts-list', 'FS-EL-03', 'Fallowsweep parts list, new edition', ago(4, 12, 5)),
      bulletin: paper('service-bulletin', 'FS-TM-08', 'Blade bolts, first series', ago(8, 8, 14), {
        effective: ago(8, 9, 1),
      }),
    },
    positions: [...driveLine(calendar), ...clutch(calendar), ...deck(calendar), ...runningGear(calendar)],
  };
}

function driveLine({ ago }: Calendar): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 20,
    planes: 1 as const,
    shearPlanesAtMm: [12],
    holeDiameterMm: 12.5,
    gripMm: 32,
    ratedTorqueNm: 1150,
  };
  return [
    {
      code: 'PTO-BLT',
      name: 'Drive line shear bolt',
      assembly: 'Drive line',
      places: ['yoke'],
      at: [80, 28],
      joint,
      parts: [
        part('720.012.05', 'Shear bolt M12, class 4.8', 390, pin(12, 55, ['ISO 898-1', '4.8'])),
        part('720.012.08', 'Shear bolt M12, class 5.8', 420, pin(12, 55, ['ISO 898-1', '5.8'])),
        part('720.012.88', 'Bolt M12, class 10.9', 310, pin(12, 55, ['ISO 898-1', '10.9'])),
      ],
      rules: [
        says('manual', '720.012.05'),
        says('list', '720.012.05', {
          notFitted: 'slip-clutch',
          bars: [['720.012.88', 'breaks-later', 'never in this yoke']],
          action: 'stop-use',
        }),
        says('revised', '720.012.08', {
          built: [ago(7, 4), null],
          notFitted: 'slip-clutch',
          allows: ['720.012.05'],
          replaces: [2],
        }),
        says('revised', null, { bars: [['720.012.88', 'breaks-later', 'never in this yoke']], action: 'stop-use' }),
      ],
    },
  ];
}

function clutch({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'SLP-LIN',
      name: 'Slip clutch lining',
      assembly: 'Drive line',
      places: ['front', 'rear'],
      at: [72, 32],
      joint: null,
      parts: [part('720.140.01', 'Lining, slip clutch', 1590), part('720.140.02', 'Lining, slip clutch, thick', 1690)],
      rules: [
        says('list', '720.140.01', { fitted: 'slip-clutch' }),
        says('revised', '720.140.02', { fitted: 'slip-clutch', built: [ago(6, 9), null], replaces: [1] }),
        says('manual', '720.140.01', { fitted: 'slip-clutch' }),
      ],
    },
    {
      code: 'GBX-SEAL',
      name: 'Gear box output seal',
      assembly: 'Drive line',
      places: ['seal'],
      at: [42, 28],
      joint: null,
      parts: [part('721.005.40', 'Seal 40', 820), part('721.005.44', 'Seal 40, high temperature', 1090)],
      rules: [
        says('manual', '721.005.40'),
        says('list', '721.005.40', { allows: ['721.005.44'] }),
        says('revised', '721.005.44', { built: [ago(5, 6), null], action: 'next-service', replaces: [2] }),
      ],
    },
  ];
}

function deck({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'BLADE',
      name: 'Swinging blade',
      assembly: 'Deck',
      places: ['first', 'second'],
      at: [30, 44],
      joint: null,
      parts: [
        part('730.001.15', 'Blade, 1.5 m deck', 3890),
        part('730.001.18', 'Blade, 1.8 m deck', 4290),
        part('730.001.19', 'Blade, uplift', 4490),
      ],
      rules: [
        says('list', '730.001.15', { models: ['FS 5'] }),
        says('list', '730.001.18', { models: ['FS 6'], allows: ['730.001.19'] }),
        says('manual', '730.001.15', {
          models: ['FS 5'],
          bars: [['730.001.18', 'unsafe', 'too long for the deck']],
          action: 'stop-use',
        }),
      ],
    },
    {
      code: 'BLD-BLT',
      name: 'Blade bolt',
      assembly: 'Deck',
      places: ['first', 'second'],
      at: [46, 44],
      joint: null,
      parts: [part('730.020.01', 'Blade bolt, turned', 1190), part('730.020.03', 'Blade bolt, forged', 1490)],
      rules: [
        says('manual', '730.020.01'),
        says('list', '730.020.01'),
        says('bulletin', '730.020.03', {
          built: [null, ago(9, 1)],
          bars: [['730.020.01', 'unsafe', 'cracks under the head']],
          action: 'stop-use',
          replaces: [2],
        }),
        says('bulletin', '730.020.03', { built: [ago(9, 1), null], replaces: [2] }),
      ],
    },
  ];
}

function runningGear({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'SKD-SHOE',
      name: 'Skid shoe',
      assembly: 'Deck',
      places: ['left', 'right'],
      at: [12, 42],
      joint: null,
      parts: [part('730.200.05', 'Skid shoe', 2490), part('730.200.06', 'Skid shoe, replaceable sole', 2890)],
      rules: [
        says('manual', '730.200.05'),
        says('list', '730.200.05', { allows: ['730.200.06'] }),
        says('revised', '730.200.06', { allows: ['730.200.05'], replaces: [2] }),
      ],
    },
    {
      code: 'TW-BRG',
      name: 'Tail wheel bearing',
      assembly: 'Deck',
      places: ['upper', 'lower'],
      at: [66, 48],
      joint: null,
      parts: [part('730.310.01', 'Bearing, tail wheel', 1290), part('730.310.02', 'Bushing, tail wheel', 590)],
      rules: [
        says('manual', '730.310.02'),
        says('list', '730.310.01', { built: [ago(10, 1), ago(6, 1)] }),
        says('revised', '730.310.02', { built: [ago(5, 10), null] }),
      ],
    },
  ];
}
