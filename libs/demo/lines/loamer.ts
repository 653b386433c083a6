import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A front tine tiller, made for so long that a year digit on its plate fits two decades. */
export function loamer(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'LOAMER',
    maker: 'BRAKEN',
    name: 'Loamer front tine tiller',
    kind: 'tiller',
    models: [
      { number: 'LM-5', name: 'Loamer 5' },
      { number: 'LM-6R', name: 'Loamer 6 Reverse' },
    ],
    options: [
      { code: 'wide-kit', name: 'Wide tine kit' },
      { code: 'reverse', name: 'Reverse gear' },
    ],
    producedFrom: ago(24, 3),
    producedUntil: ago(3, 10),
    sketch:
      'M20 18 L46 18 L50 34 L16 34 Z M46 20 L88 6 M33 34 L33 44 M18 48 a10 10 0 1 0 30 0 a10 10 0 1 0 -30 0 M26 40 L40 56 M40 40 L26 56',
    papers: {
      manual: paper('owners-manual', 'LM-OM-4', 'Loamer owner’s manual, fourth printing', ago(13, 3)),
      list: paper('parts-list', 'LM-PL-20', 'Loamer parts list', ago(12, 4, 18)),
      revised: paper('revised-parts-list', 'LM-PL-21', 'Loamer parts list, revised', ago(9, 11, 3)),
      bulletin: paper('service-bulletin', 'LM-SB-09', 'Worm shaft seal', ago(7, 2, 20), { effective: ago(7, 3, 1) }),
    },
    positions: [...tines(calendar), ...gearCase(calendar), ...engine(calendar)],
  };
}

function tines({ ago }: Calendar): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 11,
    planes: 2 as const,
    shearPlanesAtMm: [11, 33],
    holeDiameterMm: 8.3,
    gripMm: 44,
    ratedTorqueNm: 640,
  };
  return [
    {
      code: 'TINE-BLT',
      name: 'Tine hub shear bolt',
      assembly: 'Tines',
      places: ['left', 'right'],
      at: [26, 48],
      joint,
      parts: [
        part('20-5010', 'Shear bolt, tine hub', 260, pin(7.94, 50.8, ['SAE J429', '2'])),
        part('20-5012', 'Shear bolt, tine hub, necked', 295, pin(7.94, 50.8, ['SAE J429', '5'], 5.6)),
        part('20-5031', 'Bolt, handle bracket, grade 5', 210, pin(7.94, 50.8, ['SAE J429', '5'])),
      ],
      rules: [
        says('manual', '20-5010', {
          bars: [['20-5031', 'breaks-later', 'a handle bolt in the hub breaks the worm gear']],
        }),
        says('list', '20-5010'),
        says('revised', '20-5012', {
          built: [ago(10, 6, 14), null],
          bars: [['20-5010', 'breaks-sooner', 'for the smaller hub']],
          replaces: [2],
        }),
      ],
    },
    {
      code: 'TINE-OUT',
      name: 'Outer tine',
      assembly: 'Tines',
      places: ['left', 'right'],
      at: [20, 52],
      joint: null,
      parts: [part('20-5110', 'Tine, outer', 1890), part('20-5118', 'Tine, outer, wide kit', 2240)],
      rules: [
        says('manual', '20-5110'),
        says('list', '20-5110', { notFitted: 'wide-kit' }),
        says('list', '20-5118', { fitted: 'wide-kit' }),
      ],
    },
    {
      code: 'TINE-IN',
      name: 'Inner tine',
      assembly: 'Tines',
      places: ['left', 'right'],
      at: [36, 50],
      joint: null,
      parts: [part('20-5120', 'Tine, inner', 1750), part('20-5120A', 'Tine, inner, hardened edge', 1980)],
      rules: [says('list', '20-5120'), says('revised', '20-5120A', { built: [ago(8, 1), null], allows: ['20-5120'] })],
    },
  ];
}

function gearCase({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'WRM-SEAL',
      name: 'Worm shaft seal',
      assembly: 'Gear case',
      places: ['input', 'output'],
      at: [33, 42],
      joint: null,
      parts: [part('21-0330', 'Seal, single lip', 540), part('21-0330B', 'Seal, double lip', 690)],
      rules: [
        says('manual', '21-0330'),
        says('list', '21-0330', { endedBy: 'bulletin' }),
        says('bulletin', '21-0330B', {
          bars: [['21-0330', 'other', 'weeps on a warm gear case']],
          action: 'next-service',
        }),
      ],
    },
    {
      code: 'WRM-BRG',
      name: 'Worm bearing',
      assembly: 'Gear case',
      places: ['bearing'],
      at: [30, 38],
      joint: null,
      parts: [part('21-0410', 'Bearing, worm', 1640), part('21-0412', 'Bearing, worm, tapered', 2050)],
      rules: [
        says('manual', '21-0410'),
        says('list', '21-0410', { built: [null, ago(16, 2)] }),
        says('list', '21-0412', { built: [ago(16, 2), null] }),
      ],
    },
    {
      code: 'GC-GSK',
      name: 'Gear case gasket',
      assembly: 'Gear case',
      places: ['gasket'],
      at: [38, 38],
      joint: null,
      parts: [part('21-0510', 'Gasket, paper', 310), part('21-0511', 'Gasket, coated', 420)],
      rules: [
        says('list', '21-0510', { allows: ['21-0511'] }),
        says('revised', '21-0511', { allows: ['21-0510'], replaces: [1] }),
      ],
    },
  ];
}

function engine({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'DRV-BLT',
      name: 'Drive belt',
      assembly: 'Drive',
      places: ['forward'],
      at: [44, 28],
      joint: null,
      parts: [part('22-1010', 'Belt, forward', 1490), part('22-1014', 'Belt, forward, cogged', 1720)],
      rules: [
        says('manual', '22-1014'),
        says('list', '22-1010', { built: [null, ago(11, 3)] }),
        says('list', '22-1014', { built: [ago(11, 3), null] }),
      ],
    },
    {
      code: 'REV-BLT',
      name: 'Reverse belt',
      assembly: 'Drive',
      places: ['reverse'],
      at: [48, 32],
      joint: null,
      parts: [part('22-1020', 'Belt, reverse', 1390), part('22-1022', 'Belt, reverse, narrow', 1410)],
      rules: [
        says('list', '22-1020', { models: ['LM-6R'] }),
        says('revised', '22-1022', { models: ['LM-6R'], built: [ago(9, 9), null], replaces: [1] }),
      ],
    },
  ];
}
