import type { Findings } from '../../../../findings/schema.ts';
import type { Current } from '../../../../findings/shapes/current.ts';
import { OpeningCables } from '../../parts/openingCables.tsx';
import { openInAmps } from '../../store/amps/openInAmps.ts';
import { ampsColumns } from './ampsColumns.tsx';
import { AmpsSheet } from './ampsSheet.tsx';

interface CablesProps {
  trial: string;
  findings: Findings;
  current: Current;
  open: string | null;
}

/** The cables with their figures under current; each opens to what they lean on. */
export function AmpsCables({ trial, findings, current, open }: CablesProps) {
  const cables = current.cables.filter((c) => c.role !== 'control');
  return (
    <OpeningCables
      subject="amps"
      caption="Ohms, heat and carrying current"
      cables={cables}
      columns={ampsColumns(cables, findings)}
      open={open}
      onOpen={(cable) => openInAmps(trial, cable === null ? { what: 'nothing' } : { what: 'cable', cable })}
      sheet={(cable) => <AmpsSheet key={cable.cable} cable={cable} findings={findings} />}
    />
  );
}
