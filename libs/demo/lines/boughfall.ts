import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A towed chipper driven from a tractor's shaft. */
export function boughfall(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'BOUGHFALL',
    maker: 'TARNVE',
    name: 'Boughfall towed chipper',
    kind: 'towed chipper',
    models: [
      { number: 'BF 120', name: 'Boughfall 120' },
      { number: 'BF 150', name: 'Boughfall 150' },
    ],
    options: [{ code: 'overrun', name: 'Overrunning clutch' }],
    producedFrom: ago(14, 1),
    producedUntil: null,
    sketch:
      'M8 36 L30 20 L30 48 L8 46 Z M30 16 L60 16 L60 48 L30 48 Z M60 20 L74 4 L84 6 L70 28 M60 40 L94 40 M40 48 a7 7 0 1 0 0.1 0 M54 48 a7 7 0 1 0 0.1 0',
    papers: {
      manual: paper('owners-manual', 'BF-BA-1', 'Boughfall operating manual', ago(14, 1)),
      list: paper('parts-list', 'BF-EL-04', 'Boughfall parts list', ago(11, 5, 8)),
      revised: paper('revised-parts-list', 'BF-EL-05', 'Boughfall parts list, new edition', ago(7, 10, 17)),
      bulletin: paper('service-bulletin', 'BF-TM-22', 'Shaft bolts of the drive line', ago(5, 9, 25)),
      advice: paper('makers-advice', 'reply 88', 'Tarnvelde on infeed chains', ago(2, 2, 11), { receivedAfter: 3 }),
    },
    positions: [...driveLine(calendar), ...gearBox(calendar), ...drum(calendar), ...infeed(calendar)],
  };
}

function driveLine({ ago }: Calendar): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 22,
    planes: 1 as const,
    shearPlanesAtMm: [14],
    holeDiameterMm: 10.4,
    gripMm: 34,
    ratedTorqueNm: 900,
  };
  return [
    {
      code: 'PTO-BLT',
      name: 'Drive line shear bolt',
      assembly: 'Drive line',
      places: ['yoke'],
      at: [76, 40],
      joint,
      parts: [
        part('620.010.08', 'Shear bolt M10, class 5.8', 310, pin(10, 50, ['ISO 898-1', '5.8'])),
        part('620.010.12', 'Shear bolt M10, class 8.8', 340, pin(10, 50, ['ISO 898-1', '8.8'])),
        part('620.010.20', 'Bolt M10, class 12.9', 290, pin(10, 50, ['ISO 898-1', '12.9'])),
      ],
      rules: [
        says('manual', '620.010.08', {
          bars: [['620.010.20', 'breaks-later', 'the gear box lets go first']],
          voids: ['620.010.20'],
          action: 'stop-use',
        }),
        says('list', '620.010.08', { notFitted: 'overrun' }),
        says('list', '620.010.12', { fitted: 'overrun' }),
        says('bulletin', '620.010.08', {
          built: [ago(8, 3), ago(6, 11)],
          bars: [['620.010.12', 'breaks-later', 'the clutch of these years passes the shock on']],
          action: 'next-service',
          replaces: [3],
        }),
      ],
    },
    {
      code: 'UJ-CROSS',
      name: 'Joint cross',
      assembly: 'Drive line',
      places: ['front', 'rear'],
      at: [86, 40],
      joint: null,
      parts: [part('620.022.01', 'Joint cross 27', 3290), part('620.022.02', 'Joint cross 30', 3690)],
      rules: [
        says('manual', '620.022.01'),
        says('list', '620.022.01', { models: ['BF 120'] }),
        says('list', '620.022.02', { models: ['BF 150'] }),
      ],
    },
  ];
}

function gearBox({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'GBX-SEAL',
      name: 'Gear box seal',
      assembly: 'Drive line',
      places: ['input', 'output'],
      at: [66, 40],
      joint: null,
      parts: [part('621.005.11', 'Seal 35', 780), part('621.005.14', 'Seal 35, dust lip', 920)],
      rules: [
        says('manual', '621.005.11'),
        says('list', '621.005.11', { allows: ['621.005.14'] }),
        says('revised', '621.005.14', { built: [ago(8, 5), null], replaces: [2] }),
      ],
    },
    {
      code: 'OVR-SPR',
      name: 'Clutch spring',
      assembly: 'Drive line',
      places: ['spring'],
      at: [72, 44],
      joint: null,
      parts: [part('621.040.02', 'Spring, clutch', 640), part('621.040.03', 'Spring, clutch, stainless', 890)],
      rules: [
        says('list', '621.040.02', { fitted: 'overrun' }),
        says('revised', '621.040.03', { fitted: 'overrun', allows: ['621.040.02'], replaces: [1] }),
      ],
    },
  ];
}

function drum({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'KNIFE',
      name: 'Drum knife',
      assembly: 'Drum',
      places: ['first', 'second'],
      at: [44, 30],
      joint: null,
      parts: [part('630.100.01', 'Drum knife', 4890), part('630.100.05', 'Drum knife, chrome', 5690)],
      rules: [
        says('manual', '630.100.01'),
        says('list', '630.100.01', { built: [null, ago(9, 2)] }),
        says('list', '630.100.05', { built: [ago(9, 5), null] }),
      ],
    },
    {
      code: 'ANVIL',
      name: 'Counter knife',
      assembly: 'Drum',
      places: ['anvil'],
      at: [34, 38],
      joint: null,
      parts: [part('630.120.01', 'Counter knife', 3790), part('630.120.02', 'Counter knife, turnable', 4290)],
      rules: [
        says('manual', '630.120.01'),
        says('list', '630.120.01', { allows: ['630.120.02'] }),
        says('revised', '630.120.02', { allows: ['630.120.01'], replaces: [2] }),
      ],
    },
  ];
}

function infeed({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'INF-CHN',
      name: 'Infeed chain',
      assembly: 'Drum',
      places: ['left', 'right'],
      at: [20, 36],
      joint: null,
      parts: [part('640.007.30', 'Chain, infeed, 46 links', 4190), part('640.007.31', 'Chain, infeed, 48 links', 4290)],
      rules: [
        says('list', '640.007.30'),
        says('revised', '640.007.31', { built: [ago(8, 1), null], replaces: [1] }),
        says('advice', '640.007.30', {
          built: [ago(8, 1), ago(7, 6)],
          models: ['BF 120'],
          action: 'nothing',
          replaces: [2],
        }),
      ],
    },
    {
      code: 'DRM-BRG',
      name: 'Drum bearing',
      assembly: 'Drum',
      places: ['left', 'right'],
      at: [52, 34],
      joint: null,
      parts: [part('630.140.01', 'Bearing, drum', 5290), part('630.140.03', 'Bearing, drum, split', 8900)],
      rules: [
        says('manual', '630.140.01'),
        says('list', '630.140.01', { allows: ['630.140.03'] }),
        says('revised', '630.140.01', { built: [null, ago(8, 6)] }),
      ],
    },
  ];
}
