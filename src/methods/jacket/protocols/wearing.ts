import { DUST, type Protocol, SHOW_THROUGH, step } from './protocol.ts';

/** Tests that wear or press through the wall. */
export const WEARING: readonly Protocol[] = [
  {
    name: 'scrape',
    alsoCalled: ['needle', 'abrasion by needle'],
    kind: 'amount',
    unit: 'strokes',
    stress: { what: 'Load on the needle', unit: 'N' },
    perWall: true,
    asks: 'How many strokes of a hard edge does the jacket take until copper shows?',
    apparatus: [
      'A steel wire or drill shank of one stated diameter (0.45 mm spring wire is usual on thin cable), held crosswise in a short arm',
      'A weight on the arm over the wire: 0.7 kg gives about 7 N',
      'A channel that keeps the piece straight, and two stops for a stroke of 15 to 20 mm',
    ],
    steps: [
      step('Clamp the piece in the channel and set the wire on the jacket, away from its print.'),
      step('Set stops and weight once and leave them for all cables.'),
      step('Stroke evenly, about one a second, there and back counting two.', DUST, 'Keep fingers out of the stroke.'),
      step('Count until copper shows. Note the count, then take a fresh piece.', SHOW_THROUGH),
      step('Change the wire when its edge has worn, and take the cables in mixed order.'),
    ],
    stop: 'Stop when copper shows, or at a count fixed beforehand for all cables; then the piece survived that count.',
    record:
      'Strokes until copper showed, or strokes survived; load; how often it was looked at, where that was not every stroke.',
    counter: 'strokes',
  },
  {
    name: 'sandpaper',
    alsoCalled: ['sand paper', 'abrasive', 'abrasion', 'belt'],
    kind: 'amount',
    unit: 'strokes',
    stress: { what: 'Load on the paper', unit: 'N' },
    perWall: true,
    asks: 'How many strokes of fresh sandpaper does the jacket take until copper shows?',
    apparatus: [
      'Sandpaper of one grit from one pack (150 is usual), cut in strips that are used once',
      'A block that lies on the piece, with a weight on it',
      'A board with a groove for the piece and stops for one stroke length',
    ],
    steps: [
      step('Fix the piece in the groove and a fresh strip on the block.'),
      step('Stroke at one pace over the same length; a fresh strip after a count that is the same for all.', DUST),
      step('Look after every so many strokes and note how many that is.'),
      step('Note the count at which copper was first seen, then take a fresh piece.', SHOW_THROUGH),
    ],
    stop: 'Stop when copper shows, or at a count fixed beforehand for all cables.',
    record:
      'Strokes until copper was seen, or strokes survived; strokes between two looks in `inspected_every`; load and grit.',
    counter: 'strokes',
  },
  {
    name: 'cut-through',
    alsoCalled: ['cut through', 'cut', 'blade', 'knife edge'],
    kind: 'amount',
    unit: 'N',
    stress: null,
    perWall: true,
    asks: 'How hard can a blunt edge press before copper shows?',
    apparatus: [
      'An edge ground to a stated radius, such as the back of a blade, set crosswise in a guided plunger',
      'A drill press or screw to lower it, a kitchen scale with an anvil block under the piece',
      'A stop that catches the plunger a millimetre above the anvil',
    ],
    steps: [
      step('Lay the piece on the anvil and set the scale to zero.'),
      step(
        'Lower the edge slowly, at one pace for all cables, and watch the scale.',
        'Fingers clear of the edge; a stop under the plunger.',
      ),
      step('Note the greatest reading until copper shows. Grams times 0.0098 are newtons.', SHOW_THROUGH),
      step(
        'Turn the piece and move on along it only if it is one piece for one reading; take a fresh piece for the next.',
      ),
    ],
    stop: 'Stop when copper shows, or at the end of the scale: then the piece survived that force.',
    record: 'Force at which copper showed, or force survived.',
    counter: null,
  },
  {
    name: 'pinch',
    alsoCalled: ['crush', 'squeeze'],
    kind: 'amount',
    unit: 'N',
    stress: { what: 'Diameter of the rod', unit: 'mm' },
    perWall: true,
    asks: 'How hard can the cable be pinched against a rod before copper touches it?',
    apparatus: [
      'A bare steel rod of one stated diameter (3 mm is usual) across a flat anvil',
      'A lever or vice with a scale that reads the force',
      'A buzzer from a coin cell between rod and conductor',
    ],
    steps: [
      step(
        'Lay the piece across the rod and press it down with a flat block, slowly and at one pace.',
        'Feet and fingers clear of weight and lever.',
      ),
      step('Note the force when the buzzer sounds.', SHOW_THROUGH),
      step('Take a fresh piece for the next reading.'),
    ],
    stop: 'Stop when the buzzer sounds, or at the end of the scale.',
    record: 'Force at which the conductor touched the rod, or force survived; diameter of the rod.',
    counter: null,
  },
  {
    name: 'hot iron',
    alsoCalled: ['soldering iron', 'iron'],
    kind: 'amount',
    unit: 's',
    stress: { what: 'Temperature of the tip', unit: 'C' },
    perWall: true,
    asks: 'How many seconds does a hot tip of one weight need to reach copper?',
    apparatus: [
      'A temperature-controlled soldering iron with a blunt tip, its temperature checked',
      'A hinge that lets the iron rest with its own weight',
      'A stand for the piece that does not burn, outdoors or under an extractor',
    ],
    steps: [
      step(
        'Let the tip settle at one temperature and wipe it.',
        'Outdoors or with an extractor: fumes of PVC are acid, those of fluoropolymers are toxic.',
        'Nothing that burns below or beside; fluids are put away in another room on another day.',
      ),
      step('Let it down on the piece and start the timer.'),
      step('Stop the timer when copper shows. Wipe the tip, let it settle, take a fresh piece.', SHOW_THROUGH),
    ],
    stop: 'Stop when copper shows, or after a time fixed beforehand for all cables. Stop at once if it flames.',
    record: 'Seconds until copper showed, or seconds survived; temperature of the tip.',
    counter: 'timer',
  },
];
