import { useState } from 'preact/hooks';
import { keepLook, type Sight } from '../../../store/bench/looks.ts';
import { sentenceOf } from '../../../store/sentenceOf.ts';
import { backToField } from '../dialogs.tsx';

/** Keeps what was seen and goes on to the next cable, or back to the bench; the sentence says what stood in the way. */
export function useKeep(): [
  keep: (sights: readonly Sight[]) => void,
  trouble: string,
  say: (sentence: string) => void,
] {
  const [trouble, setTrouble] = useState('');
  const keep = async (sights: readonly Sight[]) => {
    try {
      if (!(await keepLook(sights))) backToField();
    } catch (error) {
      setTrouble(`Not kept. ${sentenceOf(error)}`);
    }
  };
  return [(sights) => void keep(sights), trouble, setTrouble];
}
