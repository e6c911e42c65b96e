import type { Findings } from '../../../../findings/schema.ts';
import type { CurrentCable, FourWireReading, HeatingTest } from '../../../../findings/shapes/current.ts';
import { cautionsFor } from '../../../../methods/current/cautions.ts';
import { fourWirePlot } from '../../../../report/amps/fourWirePlot.ts';
import { heatingCurve } from '../../../../report/amps/heatingCurve.ts';
import { measuredText } from '../../../../report/figures.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Minds } from '../../parts/mind.tsx';
import { Picture } from '../../parts/picture.tsx';
import { type AmpsData, ampsData } from '../../store/amps/ampsData.ts';
import { addressOf } from '../../store/routeOf.ts';
import { units } from '../../store/units.ts';

const PLOT = { width: 400, height: 230, theme: variablesTheme };
/** A test and its drawing are the same when their currents are this near. A */
const SAME = 1e-6;

/** What one cable's figures lean on: volts over amps, its heating with the curve, and what sets the current it carries. */
export function AmpsSheet({ cable, findings }: { cable: CurrentCable; findings: Findings }) {
  const drawn = ampsData.value?.trial === findings.trial ? ampsData.value : null;
  return (
    <div class="sheet amps-sheet">
      {cable.carrying !== null && <p class="said">{noBreak(cable.carrying.text)}</p>}
      <div class="columns">
        <Heating cable={cable} drawn={drawn} />
        <div>
          <Carrying cable={cable} findings={findings} />
          <FourWires cable={cable} drawn={drawn} findings={findings} />
        </div>
      </div>
    </div>
  );
}

function Heating({ cable, drawn }: { cable: CurrentCable; drawn: AmpsData | null }) {
  return (
    <section>
      <h3>Heating</h3>
      {cable.heating_tests.length === 0 && (
        <p class="note">
          It was not heated. One test on it sets its heat for good; until then the tests of other cables here, or the
          model alone, stand for it.
        </p>
      )}
      <div class="heatings">
        {cable.heating_tests.map((test) => (
          <OneHeating key={`${test.specimen} ${test.current_A}`} test={test} cable={cable} drawn={drawn} />
        ))}
      </div>
      {cable.heating_tests.length > 0 && <Minds texts={cautionsFor('heating test').slice(0, 2)} />}
    </section>
  );
}

function OneHeating({ test, cable, drawn }: { test: HeatingTest; cable: CurrentCable; drawn: AmpsData | null }) {
  const heating = drawn?.answer?.heatings.find(
    (h) => h.specimen === test.specimen && Math.abs(h.current - test.current_A) < SAME,
  );
  const rise = test.steady_rise;
  const steady = rise && { value: rise.value, low: rise.interval[0], high: rise.interval[1] };
  return (
    <div class="drawn-one">
      <h4>
        {noBreak(`${test.current_A.toFixed(0)} A`)}{' '}
        <span class="unit">
          <bdi dir="auto">{test.specimen}</bdi>, {test.minutes.toFixed(0)} min at{' '}
          {noBreak(`${test.ambient_C.toFixed(1)} °C`)}
        </span>
      </h4>
      {heating !== undefined && (
        <Picture class="stretch" svg={heatingCurve({ heating, name: cable.name || cable.cable, steady }, PLOT)} />
      )}
      <p>
        {rise === null ? (
          <b>Where it ends is not settled.</b>
        ) : (
          noBreak(
            `Ends ${measuredText(rise)} above the surroundings; two thirds of the way after about ${Math.max(1, Math.round((test.slowest_s?.value ?? 0) / 60))} min.`,
          )
        )}
      </p>
      {test.text !== '' && <p>{noBreak(test.text)}</p>}
      {test.copper !== null && !test.copper.apart && (
        <p class="note">
          {noBreak(
            `By its own resistance the copper rose ${test.copper.by_resistance.toFixed(1)} K, by the thermometer ${test.copper.by_thermometer.toFixed(1)} K: they agree.`,
          )}
        </p>
      )}
    </div>
  );
}

function FourWires({ cable, drawn, findings }: { cable: CurrentCable; drawn: AmpsData | null; findings: Findings }) {
  const ohms = findings.cables.find((c) => c.cable === cable.cable)?.resistance_20C ?? null;
  return (
    <section>
      <h3>Resistance</h3>
      {ohms !== null && <p>{noBreak(`${measuredText(ohms, units.value)} at 20 °C, from all readings.`)}</p>}
      {cable.four_wire.map((reading) => (
        <OneFourWire key={reading.specimen} reading={reading} drawn={drawn} />
      ))}
      {cable.four_wire.length === 0 && (
        <p class="note">
          No volts with their amps are on record for it: ohms were read off a meter. Volts at two or three currents,
          both ways round, show what the metal makes by itself at warm contacts, and whether the test warmed the wire.{' '}
          <a href={addressOf({ place: 'bench', trial: findings.trial, slate: false })}>Measure by volts and amps</a> at
          the bench: the step for ohms leads there, or tick it on Plan.
        </p>
      )}
      <Minds texts={cautionsFor('four-wire')} />
    </section>
  );
}

function OneFourWire({ reading, drawn }: { reading: FourWireReading; drawn: AmpsData | null }) {
  const points = drawn?.answer?.fourWires.find((f) => f.specimen === reading.specimen);
  const resistance = reading.resistance === null ? null : reading.resistance.value / 1000;
  const emf = reading.emf_uV === null ? null : reading.emf_uV.value * 1e-6;
  return (
    <div class="drawn-one">
      <h4>
        Volts over amps{' '}
        <span class="unit">
          <bdi dir="auto">{reading.specimen}</bdi>, {reading.points} pairs
        </span>
      </h4>
      {points !== undefined && (
        <Picture class="stretch" svg={fourWirePlot({ reading: points, resistance, emf }, PLOT)} />
      )}
      {reading.resistance !== null && <p>{noBreak(`${measuredText(reading.resistance)} between the contacts.`)}</p>}
      {reading.text !== '' && <p>{noBreak(reading.text)}</p>}
    </div>
  );
}

function Carrying({ cable, findings }: { cable: CurrentCable; findings: Findings }) {
  const { carrying, missing } = cable;
  if (carrying === null)
    return (
      <section>
        <h3>What it carries</h3>
        <p>Not known: {missing ?? 'it is a control piece'}.</p>
      </section>
    );
  const found = findings.cables.find((c) => c.cable === cable.cable);
  return (
    <section>
      <h3>What it carries</h3>
      <dl class="figures">
        <div>
          <dt>Current</dt>
          <dd>{measuredText({ ...carrying.current_A, condition: undefined })}</dd>
        </div>
        <div>
          <dt>Until the conductor is at</dt>
          <dd>{noBreak(`${carrying.rating_C.toFixed(0)} °C`)}</dd>
        </div>
        <div>
          <dt>Surroundings</dt>
          <dd>{noBreak(`${carrying.ambient_C.toFixed(0)} °C, still air`)}</dd>
        </div>
        {found?.outer_diameter && (
          <div>
            <dt>Diameter</dt>
            <dd>{measuredText(found.outer_diameter, units.value)}</dd>
          </div>
        )}
        {carrying.calibrated_by !== 'nothing' && (
          <div>
            <dt>Gives off heat, of the model</dt>
            <dd>{noBreak(`${(100 * carrying.loss_factor).toFixed(0)} %`)}</dd>
          </div>
        )}
      </dl>
      {carrying.rating_assumed && (
        <p class="note">
          No temperature is printed on the jacket or on record, so the lowest usual one stands for it. Add it to the
          cable on Plan.
        </p>
      )}
      <Minds texts={cautionsFor('run check').slice(0, 1)} />
    </section>
  );
}
