import { chooseUnit, units } from '../store/units.ts';
import { Switch } from './switch.tsx';

/** The switches for the units that figures are shown in. */
export function UnitSwitches() {
  const now = units.value;
  return (
    <div class="units">
      <Switch
        legend="Area shown in"
        choices={[
          ['mm2', 'mm²', 'square millimetres'],
          ['awg', 'AWG', 'American wire gauge'],
        ]}
        value={now.area}
        onChoose={(unit) => chooseUnit('area', unit)}
      />
      <Switch
        legend="Thickness shown in"
        choices={[
          ['mm', 'mm', 'millimetres'],
          ['in', 'in', 'inches'],
        ]}
        value={now.length}
        onChoose={(unit) => chooseUnit('length', unit)}
      />
      <Switch
        legend="Resistance shown per"
        choices={[
          ['m', 'm', 'metre'],
          ['ft', 'ft', 'foot'],
        ]}
        value={now.perLength}
        onChoose={(unit) => chooseUnit('perLength', unit)}
      />
      <Switch
        legend="Temperature shown in"
        choices={[
          ['C', '°C', 'degrees Celsius'],
          ['F', '°F', 'degrees Fahrenheit'],
        ]}
        value={now.temperature}
        onChoose={(unit) => chooseUnit('temperature', unit)}
      />
    </div>
  );
}
