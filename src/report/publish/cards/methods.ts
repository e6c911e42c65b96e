/** The methods that a card explains, each in the sentence that is said while it is shown. */
export interface MethodExplained {
  method: string;
  title: string;
  /** One or two sentences, to be read in eight seconds. */
  sentence: string;
  /** What the tools must do, small below. */
  note: string;
}

export const METHODS: readonly MethodExplained[] = [
  {
    method: 'ohms',
    title: 'Ohms by four wires',
    sentence:
      'Two clips carry the current, two others read the volts between them. So the clips’ own resistance does not count, only the cable’s.',
    note: 'Over the whole bought length, before the first cut, at one temperature.',
  },
  {
    method: 'weigh',
    title: 'Weighing the metal',
    sentence:
      'A measured length is stripped and weighed. Copper has one density, so its mass tells how much of it there is.',
    note: 'Length, mass and ohms together also tell the metal.',
  },
  {
    method: 'strands',
    title: 'Counting strands',
    sentence: 'Strands are counted bundle by bundle and gauged. Count times thickness gives the area a third time.',
    note: 'If it does not agree with mass and ohms, something was read wrong, and we look again.',
  },
  {
    method: 'droop',
    title: 'How far it hangs',
    sentence:
      'A clamped piece bends under its own weight. The further it hangs for its weight, the more easily it bends.',
    note: 'Turned over and read again, so that its own curve does not count.',
  },
  {
    method: 'push',
    title: 'Pushed on a scale',
    sentence:
      'A piece lies across two supports on a scale and is pushed in the middle. The scale tells the push, a caliper how far it gives.',
    note: 'Little by little and back, because strands that rub hold it at first.',
  },
  {
    method: 'coil',
    title: 'How tightly it coils',
    sentence:
      'A piece is wound as tightly as it goes without a kink. The narrower the coil, the tighter it can be laid.',
    note: 'Turns are counted and the coil is measured across, at room temperature.',
  },
  {
    method: 'pairs',
    title: 'Two at a time, by hand',
    sentence:
      'Somebody bends two pieces and says which is easier, without seeing which is which. Many pairs make an order.',
    note: 'Cables that the judgements do not part share a band.',
  },
  {
    method: 'wall',
    title: 'The wall of the jacket',
    sentence: 'The jacket is measured all round a cut face. What counts is its thinnest place.',
    note: 'Shares of the face say where the thickness goes: metal, air or jacket.',
  },
  {
    method: 'endurance',
    title: 'Until it wears through',
    sentence:
      'The same edge, the same weight, stroke by stroke until copper shows. Pieces that come through count as lasting at least so long.',
    note: 'Few pieces give wide intervals, and they are shown.',
  },
  {
    method: 'heat',
    title: 'Heat under load',
    sentence:
      'A steady current warms the cable until it gives off as much as it takes in. From that follows what it carries.',
    note: 'Estimate. Fuse at the source by the rule you work under; terminals not judged.',
  },
  {
    method: 'standing',
    title: 'How the order is made',
    sentence:
      'Each finding is weighed on a fixed scale, with all of its doubt. Cables between which no clean cut can be made share their places.',
    note: 'Other weights give another order; the report says which.',
  },
];
