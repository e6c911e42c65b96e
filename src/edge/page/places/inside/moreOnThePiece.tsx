import type { ComponentChildren } from 'preact';
import type { CableFindings } from '../../../../findings/schema.ts';
import { Figure } from '../../parts/figure.tsx';
import { figuresOfThePiece } from './figuresOfThePiece.ts';

/** The rest of what is known about a piece: figures, masses, fit, what is missing and what was assumed. */
export function MoreOnThePiece({ cable }: { cable: CableFindings }) {
  const figures = figuresOfThePiece(cable);
  return (
    <>
      {figures.length > 0 && (
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
          {cable.strands_sentence !== null && <p class="note">{cable.strands_sentence}</p>}
        </section>
      )}
      <section>
        <Lines title="Do the masses close?" lines={cable.masses.map((mass) => `${mass.specimen}: ${mass.text}`)} />
        <Lines
          title="What it fits"
          lines={cable.fit.map((fit) => (fit.tried ? `${fit.text} Tried: ${fit.tried}.` : fit.text))}
        />
        <Lines title="Not measured" lines={cable.missing} />
        <Lines title="Assumed limits of error" lines={cable.assumed} />
      </section>
    </>
  );
}

function Lines({ title, lines }: { title: ComponentChildren; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul class="plain">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
