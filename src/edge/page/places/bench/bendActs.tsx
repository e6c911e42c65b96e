import type { BenchAct } from '../../../../findings/nextAct.ts';
import { Switch } from '../../parts/switch.tsx';
import { bendAct, chooseFace, choosePush, coilEdge, face, push } from '../../store/bench/bendHand.ts';
import { takeUp } from '../../store/bench/inHand.ts';
import { bendRoute } from '../../store/bend/openInBend.ts';
import { folded } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';

/** What bending asks for with a reading, filled in as far as it follows; and the way to the other acts of bending. */
export function BendActs({ act }: { act: BenchAct }) {
  if (act.item.step !== 'bend') return null;
  return (
    <div class="bend-acts">
      <With quantity={act.item.quantity} />
      <Others specimen={act.item.specimen} />
    </div>
  );
}

function With({ quantity }: { quantity: string }) {
  if (quantity === 'tip_drop' || quantity === 'chord_angle')
    return (
      <Switch
        legend="Which way up the piece lies"
        choices={[
          ['up', 'as laid', 'as laid'],
          ['down', 'turned over', 'turned over'],
        ]}
        value={face.value}
        onChoose={chooseFace}
      />
    );
  if (bendAct.value === 'push')
    return (
      <>
        <Switch
          legend="Which push"
          choices={[
            ['first push', 'first push', 'the first push of a fresh piece'],
            ['worked in', 'worked in', 'worked in'],
          ]}
          value={push.value.run}
          onChoose={(run) => choosePush({ run })}
        />
        {quantity !== 'push_span' && (
          <Switch
            legend="Pressing down or letting back"
            choices={[
              ['loading', 'pressing down', 'pressing down'],
              ['unloading', 'letting back', 'letting back'],
            ]}
            value={push.value.branch}
            onChoose={(branch) => choosePush({ branch })}
          />
        )}
      </>
    );
  if (quantity === 'coil_diameter')
    return (
      <Switch
        legend="Where the coil is measured"
        choices={[
          ['inside', 'inside', 'between its inner faces'],
          ['middle', 'middle', 'from middle to middle of the cable'],
          ['outside', 'outside', 'over its outer faces'],
        ]}
        value={coilEdge.value}
        onChoose={(edge) => {
          coilEdge.value = edge;
        }}
      />
    );
  return null;
}

function Others({ specimen }: { specimen: string }) {
  const trial = folded.value;
  if (trial === null) return null;
  const has = (quantity: string) =>
    trial.readings.some((r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === quantity);
  const acts: [string, string, string][] = [
    ['droop', 'Droop', 'overhang'],
    ['push', 'Push', has('push_span') ? 'push_deflection' : 'push_span'],
    ['coil', 'Coil', 'coil_diameter'],
    ['spring', 'Spring-back', 'spring_back'],
  ];
  return (
    <p class="other-acts">
      {acts
        .filter(([act]) => act !== bendAct.value)
        .map(([act, words, quantity]) => (
          <button key={act} type="button" class="link" onClick={() => takeUp({ specimen, quantity })}>
            {words}
          </button>
        ))}
      <a href={addressOf(bendRoute(trial.trial, { what: 'judge' }))}>Judge pairs</a>
    </p>
  );
}
