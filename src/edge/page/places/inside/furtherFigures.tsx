import type { CableFindings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Figure } from '../../parts/figure.tsx';
import { figuresOfThePiece } from './figuresOfThePiece.ts';

/** The figures of a piece that the table has no column for. */
export function FurtherFigures({ cable }: { cable: CableFindings }) {
  const figures = figuresOfThePiece(cable);
  if (figures.length === 0) return null;
  return (
    <section>
      <h3>Further figures</h3>
      <dl class="figures">
        {figures.map(([name, figure]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <Figure of={figure} />
            </dd>
          </div>
        ))}
      </dl>
      {cable.strands_sentence !== null && <p class="note">{noBreak(cable.strands_sentence)}</p>}
    </section>
  );
}
