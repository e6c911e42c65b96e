import { useId } from 'preact/hooks';
import { lastSaid } from '../../store/publish/lastSaid.ts';

/** A section's own line, empty once another section says something; and how to say it. */
export function useSaid(): [said: string, say: (sentence: string) => void] {
  const by = useId();
  const last = lastSaid.value;
  return [
    last.by === by ? last.sentence : '',
    (sentence) => {
      lastSaid.value = { by, sentence };
    },
  ];
}
