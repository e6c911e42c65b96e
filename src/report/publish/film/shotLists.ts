/** What to film for each method of `cards/methods.ts`, in the order in which it happens. */
export const SHOTS: Readonly<Record<string, readonly string[]>> = {
  ohms: [
    'The whole bought length laid out, with its tag',
    'Both current clips and both voltage clips at one end, close',
    'The clips shorted and the meter at zero',
    'The meter’s display with the clips in the frame, both polarities',
    'The thermometer on the copper',
  ],
  weigh: [
    'A known weight on the scale, with its display',
    'The rule along the piece, both ends',
    'Stripping, hands only, everything that falls kept in the tray',
    'The bare conductor on the scale, with its display',
    'Jacket and crumbs on the scale',
  ],
  strands: [
    'The cut face beside a rule',
    'One bundle opened and counted',
    'The micrometer on one strand, with its display',
  ],
  droop: [
    'The clamp and what hangs free, from the side at the height of the clamp',
    'The rule at the tip',
    'The same piece turned over',
  ],
  push: [
    'The two supports and the distance between them',
    'The scale’s display while the middle is pushed down, step by step',
    'The caliper at the middle, and the way back',
  ],
  coil: ['The piece as it is wound', 'The coil and the rule across it', 'What it does when it is let go'],
  pairs: ['How it is hidden which piece is which', 'Both hands on one pair', 'The answer on the phone'],
  wall: ['The cut face, square', 'The caliper at each of six places', 'The thinnest place, close'],
  endurance: [
    'The edge and its weight on the scale',
    'One whole stroke, slowly',
    'The counter and the first copper that shows',
    'All pieces side by side afterwards',
  ],
  heat: [
    'The fuse, the switch in reach and the stop temperature as set',
    'Where the thermometers sit, before the start',
    'Time, amps and degrees in one frame as it settles',
    'Cooling, until it may be touched',
  ],
  standing: ['The sliders as they are set', 'Another job chosen, and the order that follows'],
};
