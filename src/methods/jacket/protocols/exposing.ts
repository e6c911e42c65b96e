import { APART, EYES, HEAT, type Protocol, step } from './protocol.ts';

/** Tests of one fixed exposure: the piece comes through or does not. */
export const EXPOSING: readonly Protocol[] = [
  {
    name: 'cold bend',
    alsoCalled: ['cold winding', 'cold'],
    kind: 'passed',
    unit: 'bends',
    stress: { what: 'Diameter of the mandrel', unit: 'mm' },
    perWall: false,
    asks: 'Does the jacket crack when it is bent cold round a mandrel?',
    apparatus: [
      'A freezer with a thermometer beside the pieces, or the open air of a cold night',
      'A tube or rod of a stated diameter, five to ten times that of the cable, as cold as the pieces',
      'A clamp for one end',
    ],
    steps: [
      step('Let pieces and mandrel lie at one noted temperature for at least four hours.'),
      step('Clamp one end and bend half a turn within about ten seconds of taking it out.', EYES),
      step('Let it warm up, then look for cracks with a lens, in the bend and at the ends.'),
    ],
    stop: 'One bend a piece. A crack that can be seen with a lens is a failure.',
    record: 'Amount 1, failed or survived; temperature; diameter of the mandrel.',
    counter: null,
  },
  {
    name: 'heat ageing',
    alsoCalled: ['heat aging', 'ageing', 'aging', 'heat'],
    kind: 'passed',
    unit: 'h',
    stress: { what: 'Temperature of the oven', unit: 'C' },
    perWall: false,
    asks: 'Does the jacket still bend without a crack after hours in the heat?',
    apparatus: [
      'A small oven that will never hold food again, with a thermometer of its own, outdoors or under an extractor',
      'A rack so that pieces hang free, a mandrel for the bend afterwards',
    ],
    steps: [
      step('Weigh and measure each piece, and note it as before.', APART),
      step(
        'Hang the pieces for the hours and at the temperature noted; 240 h at 25 °C above the claimed class is usual for road vehicles.',
        HEAT,
      ),
      step('Let them cool for a day, weigh and measure again, then bend round the mandrel and look for cracks.'),
    ],
    stop: 'Stop the oven at once if anything smokes. A crack that can be seen with a lens is a failure.',
    record: 'Hours, failed or survived; temperature; mass and diameter before and after.',
    counter: 'timer',
  },
  {
    name: 'fluid',
    alsoCalled: ['fluids', 'fuel', 'oil', 'petrol', 'gasoline', 'diesel', 'coolant', 'brake fluid', 'battery acid'],
    kind: 'passed',
    unit: 'h',
    stress: null,
    perWall: false,
    asks: 'Does the jacket swell, shrink or crack after hours in a fluid?',
    apparatus: [
      'A lidded glass jar for each fluid, labelled, on a tray outdoors',
      'Caps or wax for the cut ends, so that fluid does not creep along the strands',
      'Scale and caliper',
    ],
    steps: [
      step(
        'Weigh each piece and measure its diameter in two directions; note both as before.',
        APART,
        'Scale, jars and tray do not go back to the kitchen. Hand the fluids in where waste oil is taken.',
      ),
      step(
        'Hang it in the fluid for the hours noted, ends out. Twenty hours is usual.',
        'Outdoors, in small amounts, gloves, lids on. Chlorinated cleaner near heat gives poison gas: do not use it.',
      ),
      step('Wipe, wait for half an hour, weigh and measure again, noted as after.'),
      step('Bend once round a mandrel and look for cracks.'),
    ],
    stop: 'One exposure a piece. A crack is a failure; swelling is a figure of its own.',
    record: 'Hours, failed or survived; name of the fluid in the test; mass and diameter before and after.',
    counter: 'timer',
  },
];
