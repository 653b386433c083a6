import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A walk-behind chipper. */
export function twigmaw(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'TWIGMAW',
    maker: 'QUILMO',
    name: 'Twigmaw chipper',
    kind: 'chipper',
    models: [
      { number: 'TG3', name: 'Twigmaw 3' },
      { number: 'TG4', name: 'Twigmaw 4' },
    ],
    options: [
      { code: 'feed-roller', name: 'Feed roller' },
      { code: 'tow-bar', name: 'Tow bar' },
    ],
    producedFrom: ago(15, 5),
    producedUntil: null,
    sketch:
      'M10 14 L34 22 L34 38 L10 30 Z M34 18 L62 18 L62 44 L34 44 Z M62 22 L84 6 L90 12 L68 34 M40 44 a7 7 0 1 0 0.1 0 M56 44 L60 56',
    papers: {
      manual: paper('owners-manual', 'TG-B-100', 'Twigmaw handbook', ago(15, 5)),
      list: paper('parts-list', 'TG-T-210', 'Twigmaw parts list', ago(11, 9, 1)),
      revised: paper('revised-parts-list', 'TG-T-215', 'Twigmaw parts list, issue 5', ago(7, 4, 20)),
      bulletin: paper('service-bulletin', 'TG-S-31', 'Knife bolts that may loosen', ago(4, 6, 7), {
        effective: ago(4, 6, 21),
      }),
      finding: paper('shop-finding', 'SF-03', 'Twigmaw knives from the hardware shelf', ago(9, 6, 1), {
        receivedAfter: 0,
      }),
    },
    positions: [...rotor(calendar), ...feed(calendar), ...infeed(calendar), ...drive(calendar)],
  };
}

function rotor({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'KNIFE',
      name: 'Chipper knife',
      assembly: 'Rotor',
      places: ['first', 'second'],
      at: [44, 26],
      joint: null,
      parts: [
        part('G310-040', 'Knife', 3250),
        part('G310-040A', 'Knife, double edged', 3790),
        part('G310-099', 'Knife blank', 1400),
      ],
      rules: [
        says('manual', 'G310-040'),
        says('list', 'G310-040', { allows: ['G310-040A'] }),
        says('revised', 'G310-040A', { built: [ago(8, 3), null], replaces: [2] }),
        says('finding', null, { bars: [['G310-099', 'unsafe', 'not hardened, chips fly']], action: 'stop-use' }),
      ],
    },
    {
      code: 'KN-BOLT',
      name: 'Knife bolt',
      assembly: 'Rotor',
      places: ['first inner', 'first outer', 'second inner', 'second outer'],
      at: [48, 32],
      joint: null,
      parts: [
        part('G310-052', 'Knife bolt, plain', 190),
        part('G310-052B', 'Knife bolt, ribbed flange', 240),
        part('G310-058', 'Guard bolt', 120),
      ],
      rules: [
        says('manual', 'G310-052'),
        says('list', 'G310-052'),
        says('bulletin', 'G310-052B', {
          built: [ago(9, 2), ago(5, 2)],
          bars: [['G310-052', 'unsafe', 'may loosen; check the torque each season']],
          action: 'next-service',
          replaces: [2],
        }),
      ],
    },
    {
      code: 'ROT-BRG',
      name: 'Rotor bearing',
      assembly: 'Rotor',
      places: ['engine side', 'free side'],
      at: [56, 30],
      joint: null,
      parts: [part('G311-010', 'Bearing, rotor', 2280), part('G311-014', 'Bearing, rotor, wide', 2610)],
      rules: [
        says('manual', 'G311-010'),
        says('list', 'G311-010', { models: ['TG3'] }),
        says('list', 'G311-014', { models: ['TG4'] }),
      ],
    },
  ];
}

function feed({ ago }: Calendar): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 10,
    planes: 2 as const,
    shearPlanesAtMm: [9, 29],
    holeDiameterMm: 6.4,
    gripMm: 38,
    ratedTorqueNm: 260,
  };
  return [
    {
      code: 'FEED-PIN',
      name: 'Feed roller shear pin',
      assembly: 'Feed',
      places: ['upper', 'lower'],
      at: [26, 28],
      joint,
      parts: [
        part('G320-006', 'Shear pin M6, class 4.6', 140, pin(6, 45, ['ISO 898-1', '4.6'])),
        part('G320-008', 'Shear pin M6, class 5.8', 160, pin(6, 45, ['ISO 898-1', '5.8'])),
        part('G320-088', 'Bolt M6, class 8.8', 90, pin(6, 45, ['ISO 898-1', '8.8'])),
      ],
      rules: [
        says('list', 'G320-006', {
          fitted: 'feed-roller',
          bars: [['G320-088', 'breaks-later', 'the roller shaft twists first']],
        }),
        says('revised', 'G320-008', {
          fitted: 'feed-roller',
          built: [ago(8, 10), null],
          bars: [['G320-006', 'breaks-sooner', 'with the larger roller']],
          replaces: [1],
        }),
        says('finding', null, { bars: [['G320-088', 'breaks-later', 'found three bent shafts']] }),
      ],
    },
  ];
}

function infeed({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'FEED-SPR',
      name: 'Feed roller spring',
      assembly: 'Feed',
      places: ['left', 'right'],
      at: [22, 22],
      joint: null,
      parts: [part('G320-110', 'Spring, roller', 680), part('G320-112', 'Spring, roller, stiff', 720)],
      rules: [
        says('list', 'G320-110', { fitted: 'feed-roller' }),
        says('revised', 'G320-112', { fitted: 'feed-roller', built: [ago(8, 10), null], replaces: [1] }),
      ],
    },
    {
      code: 'INF-CUR',
      name: 'Infeed curtain',
      assembly: 'Feed',
      places: ['curtain'],
      at: [14, 22],
      joint: null,
      parts: [part('G321-001', 'Curtain, rubber', 1190), part('G321-001A', 'Curtain, two layers', 1490)],
      rules: [
        says('manual', 'G321-001'),
        says('list', 'G321-001A', { allows: ['G321-001'] }),
        says('bulletin', 'G321-001A', { built: [ago(6, 1), null], action: 'next-service' }),
      ],
    },
  ];
}

function drive({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'DRV-BLT',
      name: 'Rotor belt',
      assembly: 'Drive',
      places: ['inner', 'outer'],
      at: [60, 38],
      joint: null,
      parts: [part('G330-201', 'Belt, rotor', 1650), part('G330-201A', 'Belt, rotor, matched', 1890)],
      rules: [
        says('manual', 'G330-201'),
        says('list', 'G330-201', { serials: { to: { day: ago(10, 5, 6), sequence: 60 } } }),
        says('list', 'G330-201A', { serials: { from: { day: ago(10, 5, 6), sequence: 60 } } }),
      ],
    },
    {
      code: 'CLT-SHOE',
      name: 'Clutch shoe',
      assembly: 'Drive',
      places: ['first', 'second'],
      at: [66, 26],
      joint: null,
      parts: [part('G331-030', 'Clutch shoe', 1150), part('G331-034', 'Clutch shoe, lined', 1390)],
      rules: [
        says('manual', 'G331-030'),
        says('list', 'G331-030'),
        says('revised', 'G331-034', { built: [ago(9, 1), null], allows: ['G331-030'] }),
      ],
    },
  ];
}
