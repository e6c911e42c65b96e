import type { Findings } from '../../../../findings/schema.ts';
import type { Flex } from '../../../../findings/shapes/flex.ts';
import type { BendMethod } from '../../../../report/bend/bendMethods.ts';
import { OpeningCables } from '../../parts/openingCables.tsx';
import type { Assay } from '../../store/assay.ts';
import { openInBend } from '../../store/bend/openInBend.ts';
import { type BentCable, bendColumns } from './bendColumns.tsx';
import { BendSheet } from './bendSheet.tsx';

interface CablesProps {
  now: Assay;
  findings: Findings;
  flex: Flex;
  methods: readonly BendMethod[];
  open: string | null;
}

/** The cables with their figures; each opens to its curves. */
export function BendCables({ now, findings, flex, methods, open }: CablesProps) {
  const cables = findings.cables.flatMap(({ cable, name }): BentCable[] => {
    const bent = flex.cables.find((c) => c.cable === cable) ?? null;
    const judged = flex.judged?.cables.some((c) => c.cable === cable) ?? false;
    return bent || judged ? [{ cable, name: name || cable, bent }] : [];
  });
  return (
    <OpeningCables
      subject="bend"
      caption="How each cable bends"
      cables={cables}
      columns={bendColumns(flex, methods)}
      open={open}
      onOpen={(cable) => openInBend(now.trial, cable === null ? { what: 'nothing' } : { what: 'cable', cable })}
      sheet={(cable) => <BendSheet now={now} findings={findings} flex={flex} cable={cable} key={cable.cable} />}
    />
  );
}
