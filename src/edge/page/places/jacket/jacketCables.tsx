import type { Findings } from '../../../../findings/schema.ts';
import type { Jacket } from '../../../../findings/shapes/jacket.ts';
import { OpeningCables } from '../../parts/openingCables.tsx';
import { openInJacket } from '../../store/jacket/openInJacket.ts';
import { jacketColumns } from './jacketColumns.tsx';
import { JacketSheet } from './jacketSheet.tsx';

interface CablesProps {
  trial: string;
  findings: Findings;
  jacket: Jacket;
  open: string | null;
}

/** The jackets with their figures; each opens to what they lean on. */
export function JacketCables({ trial, findings, jacket, open }: CablesProps) {
  const cables = jacket.cables.filter((c) => c.role !== 'control');
  return (
    <OpeningCables
      subject="jacket"
      caption="Walls, and what the jackets are"
      cables={cables}
      columns={jacketColumns(cables)}
      open={open}
      onOpen={(cable) => openInJacket(trial, cable === null ? { what: 'nothing' } : { what: 'cable', cable })}
      sheet={(cable) => <JacketSheet key={cable.cable} cable={cable} jacket={jacket} findings={findings} />}
    />
  );
}
