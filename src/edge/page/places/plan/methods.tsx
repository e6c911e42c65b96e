import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { type BendWish, type PlanMethod, planSettings } from '../../../../findings/plan/settings.ts';
import type { TrialPlan } from '../../../../findings/plan.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { EditField } from '../../parts/editField.tsx';
import { tick, tickWish, wishesIn } from '../../store/plan/methods.ts';
import { PlanSection } from './planSection.tsx';
import { SettingChoice } from './settingChoice.tsx';
import { SettingField } from './settingField.tsx';

const GROUPS: readonly { name: string; note: string; methods: readonly [PlanMethod, string][] }[] = [
  {
    name: 'Inside',
    note: '',
    methods: [
      ['ohms', 'Ohms of the whole length'],
      ['weigh', 'Strip and weigh'],
      ['strands', 'Count and measure strands'],
      ['eye', 'Scrape a strand and look'],
    ],
  },
  {
    name: 'Bend',
    note: 'Pieces are cut for it, and the bench asks for it. How easily they bend is worked out on Bend, where pairs are judged too.',
    methods: [['bend', 'Droop over an edge']],
  },
  {
    name: 'Jacket',
    note: 'Walls, and what pieces last, are worked out on Jacket. A test uses up its pieces: for a further one, cut and keep as many again.',
    methods: [
      ['wall', 'Wall round a cut face'],
      ['abuse', 'Abuse of jackets'],
    ],
  },
];

/** What is wanted of the trial: methods, how finely, how often, at which temperature. */
export function Methods({ trial, plan }: { trial: Trial; plan: TrialPlan | null }) {
  const settings = trial.settings;
  const row = trial.described?.row ?? { trial: trial.trial };
  const usual = plan?.settings;
  return (
    <PlanSection
      id="methods"
      class="methods"
      title="What is wanted"
      state={[...planSettings(settings).methods].join(', ')}
    >
      <div class="three">
        <div>
          {GROUPS.map((group) => (
            <Group key={group.name} {...group} now={planSettings(settings).methods}>
              {group.name === 'Bend' && <FurtherBending trial={trial} />}
            </Group>
          ))}
          <Amps trial={trial} />
        </div>
        <div>
          <h3>How finely</h3>
          <SettingField settings={settings} name="shortfall" kind="percent" label="Shortfall to show" usual="5 %" />
          <SettingField settings={settings} name="repeats" kind="count" label="Repeats of each reading" usual="3" />
          <SettingField
            settings={settings}
            name="specimens_each"
            kind="count"
            label="Pieces to take apart, of each cable"
            usual="1"
          />
          <EditField
            kind="trial"
            row={row}
            column="target_temperature"
            label="Temperature of all pieces"
            example="such as 20 C"
          />
          <SettingChoice
            settings={settings}
            name="working"
            label="Order of work"
            choices={[
              ['', 'one quantity, all pieces'],
              ['by specimen', 'one piece, all quantities'],
            ]}
          />
          <SettingChoice
            settings={settings}
            name="metal"
            label="Metal of the imagined cables"
            choices={[
              ['', 'copper, bare or tinned'],
              ['copper', 'bare copper'],
              ['tinned', 'tinned copper'],
            ]}
          />
        </div>
        <div>
          <h3>About the trial</h3>
          <EditField kind="trial" row={row} column="title" label="Title" />
          <EditField kind="trial" row={row} column="place" label="Where it is done" />
          <EditField kind="trial" row={row} column="purpose" label="What it is to settle" />
          <EditField kind="trial" row={row} column="disclosure" label="Who paid for what" />
        </div>
      </div>
      <details class="more">
        <summary>Lengths, the saw and the seller</summary>
        <Lengths settings={settings} usual={usual} />
      </details>
    </PlanSection>
  );
}

const mm = (length: number | undefined) => (length === undefined ? '' : `${Math.round(length * 1000)} mm`);

function Lengths({ settings, usual }: { settings: Trial['settings']; usual: TrialPlan['settings'] | undefined }) {
  const field = (name: string, label: string, shown: string) => (
    <SettingField settings={settings} name={name} kind="millimetres" label={label} usual={shown} />
  );
  return (
    <div class="lengths">
      {field('apart_mm', 'Piece to take apart', 'by size and tools')}
      {field('bend_mm', 'Piece to bend', 'by size')}
      {field('abuse_mm', 'Piece to abuse', mm(usual?.abuseLength))}
      {field('kept_mm', 'Piece kept back, 0 for none', mm(usual?.keptLength))}
      {field('saw_loss_mm', 'Lost at each cut', mm(usual?.sawLoss))}
      <SettingChoice
        settings={settings}
        name="sold_in"
        label="The seller cuts"
        choices={[
          ['', 'any length'],
          ['feet', 'whole feet'],
          ['metres', 'whole metres'],
        ]}
      />
      <SettingField
        settings={settings}
        name="sold_least"
        kind="length"
        label="Least length sold"
        usual="such as 10 ft"
      />
      <SettingField
        settings={settings}
        name="copper_price_per_kg"
        kind="money"
        label="Copper, money per kg"
        usual="as usual"
      />
    </div>
  );
}

interface GroupProps {
  name: string;
  note: string;
  methods: readonly [PlanMethod, string][];
  now: ReadonlySet<PlanMethod>;
  children?: ComponentChildren;
}

function Group({ name, note, methods, now, children }: GroupProps) {
  return (
    <fieldset class="ticks">
      <legend>{name}</legend>
      {methods.map(([method, words]) => (
        <Tick
          key={method}
          words={words}
          on={now.has(method)}
          last={now.size === 1 && now.has(method)}
          onTick={(on) => void tick(method, on)}
        />
      ))}
      {children}
      {note !== '' && <p class="note">{note}</p>}
    </fieldset>
  );
}

const FURTHER: readonly [BendWish, string][] = [
  ['push', 'Push on a kitchen scale'],
  ['coil', 'Tightest coil by hand'],
  ['spring', 'Spring-back'],
  ['judge', 'Pairs judged by hand'],
];

/** The other acts of bending: the bench asks for them on the pieces cut to bend. */
function FurtherBending({ trial }: { trial: Trial }) {
  const on = wishesIn(trial.settings.methods ?? '');
  return FURTHER.map(([wish, words]) => (
    <Tick
      key={wish}
      words={words}
      on={on.includes(wish)}
      last={false}
      onTick={(wanted) => void tickWish(wish, wanted)}
    />
  ));
}

function Amps({ trial }: { trial: Trial }) {
  const wishes = wishesIn(trial.settings.methods ?? '');
  const fourWire = wishes.includes('four-wire');
  return (
    <fieldset class="ticks">
      <legend>Amps</legend>
      <Tick
        words="Ohms by volts and amps, for which no milliohm meter is needed"
        on={fourWire}
        last={false}
        onTick={(wanted) => void tickWish('four-wire', wanted)}
      />
      <Tick
        words="How much it carries"
        on={wishes.includes('amps')}
        last={false}
        onTick={(wanted) => void tickWish('amps', wanted)}
      />
      <p class="note">
        Volts and amps are asked for at the bench, on the whole length. Plan cuts no piece for either and adds no
        minutes.
      </p>
    </fieldset>
  );
}

interface TickProps {
  words: string;
  on: boolean;
  /** The only tick that is left stays: a plan of nothing is none. */
  last: boolean;
  onTick: (on: boolean) => void;
}

function Tick({ words, on, last, onTick }: TickProps) {
  const id = useId();
  return (
    <div class="tick">
      <input
        type="checkbox"
        id={id}
        checked={on}
        disabled={last}
        onChange={(event) => onTick(event.currentTarget.checked)}
      />
      <label for={id}>
        {words}
        {last && <span class="hint">the last one stays</span>}
      </label>
    </div>
  );
}
