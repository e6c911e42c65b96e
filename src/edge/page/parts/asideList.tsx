import type { AsideKind, Trial } from '../../../trial/trial.ts';
import { Name } from './name.tsx';
import { PutAside } from './putAside.tsx';

type Listed = Exclude<AsideKind, 'current' | 'fitting'>;

interface AsideListProps {
  trial: Trial;
  kind: Listed;
  /** What a row is called. */
  nameOf: (row: Readonly<Record<string, string>>) => string;
}

/** What of one kind stands aside by itself, each with its reason and the way back; nothing while there is none. */
export function AsideList({ trial, kind, nameOf }: AsideListProps) {
  // What only went along with something else comes back with it, and is not listed by itself.
  const own = trial.withdrawals.filter(({ about }) => about === kind);
  const aside = trial.aside.filter((one) => one.kind === kind && own.some((act) => act.withdrawal === one.withdrawal));
  if (aside.length === 0) return null;
  return (
    <details class="aside-list">
      <summary>Put aside: {aside.length}</summary>
      <ul>
        {aside.map(({ entry, row, why, withdrawal }) => (
          <li key={entry}>
            {kind === 'cable' ? <Name>{nameOf(row)}</Name> : <bdi dir="auto">{nameOf(row)}</bdi>}{' '}
            <span class="why">
              “<bdi dir="auto">{why}</bdi>”
            </span>{' '}
            <PutAside
              about={kind}
              which={own.find((act) => act.withdrawal === withdrawal)!.which}
              name={nameOf(row)}
              again
            />
          </li>
        ))}
      </ul>
    </details>
  );
}
