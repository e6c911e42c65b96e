import { describe, expect, it } from 'vitest';
import { compareFindings } from '../../../src/edge/cli/firstFinding.ts';
import type { Findings } from '../../../src/findings/schema.ts';
import { sixCables } from '../../fixtures/findings.ts';

const copyOf = (): Findings => JSON.parse(JSON.stringify(sixCables));
const compared = (change: (computed: Findings) => void) => {
  const computed = copyOf();
  change(computed);
  return compareFindings(sixCables, computed, 1e-9);
};

describe('comparing published findings with computed ones', () => {
  it('finds nothing where nothing is', () => {
    expect(compared(() => {})).toEqual({ first: null, largest: 0 });
  });

  it('names the cable and the figure, not the sentence that changed with it', () => {
    const third = sixCables.cables[2]!;
    const { first } = compared(({ cables }) => {
      cables[2]!.sentence = 'Another sentence.';
      cables[2]!.conductor_area!.value += 1;
    });
    expect(first).toMatchObject({
      cable: third.name,
      place: 'conductor_area.value',
      published: third.conductor_area!.value,
      computed: third.conductor_area!.value + 1,
    });
  });

  it('names the sentence where it alone differs', () => {
    expect(compared(({ cables }) => (cables[0]!.sentence = 'Another.')).first).toMatchObject({ place: 'sentence' });
  });

  it('holds each cable against itself, whatever their order, and says so when the order is another', () => {
    const { first } = compared(({ cables }) => cables.reverse());
    expect(first).toMatchObject({ cable: null, place: 'cables[0]' });
  });

  it('says which cable is not computed', () => {
    const { first } = compared(({ cables }) => cables.splice(1, 1));
    expect(first).toMatchObject({ cable: sixCables.cables[1]!.name, computed: undefined });
  });

  it('goes on to what stands outside the cables', () => {
    expect(compared((computed) => (computed.sentence = 'Else.')).first).toMatchObject({
      cable: null,
      place: 'sentence',
    });
  });
});
