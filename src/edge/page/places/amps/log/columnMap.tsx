import { LOG_UNITS, type LogPreview, type LogRole } from '../../../../../methods/current/log/columns.ts';
import { WideRegion } from '../../../parts/wideRegion.tsx';
import { setRole, setUnit } from '../../../store/amps/bringLog.ts';

const ROLES: readonly (readonly [LogRole, string])[] = [
  ['unused', 'nothing we need'],
  ['time', 'the time'],
  ['current', 'the current'],
  ['conductor', 'the strands'],
  ['surface', 'the jacket’s outside'],
  ['ambient', 'the surroundings'],
  ['drop', 'volts between the contacts'],
];

/** The first rows of a log under its columns, each with what it seems to hold; the person changes what is wrong. */
export function ColumnMap({ preview }: { preview: LogPreview }) {
  return (
    <WideRegion name="Columns of the log">
      <table class="small log-map">
        <thead>
          <tr>
            {preview.columns.map(({ index, name, role, unit, why }) => (
              <th key={index} scope="col">
                <bdi dir="auto" class="log-name">
                  {name}
                </bdi>
                <select
                  aria-label={`What column ${index + 1} holds`}
                  value={role}
                  onChange={(event) => setRole(index, event.currentTarget.value as LogRole)}
                >
                  {ROLES.map(([value, shown]) => (
                    <option key={value} value={value}>
                      {shown}
                    </option>
                  ))}
                </select>
                {role !== 'unused' && (
                  <select
                    aria-label={`Unit of column ${index + 1}`}
                    value={unit}
                    onChange={(event) => setUnit(index, event.currentTarget.value)}
                  >
                    {LOG_UNITS[role].map((each) => (
                      <option key={each} value={each}>
                        {each === 'clock' ? 'clock' : each}
                      </option>
                    ))}
                  </select>
                )}
                <span class="note">{why}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.rows.map((row, i) => (
            <tr key={i}>
              {preview.columns.map(({ index }) => (
                <td key={index}>
                  <bdi dir="auto">{row[index] ?? ''}</bdi>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </WideRegion>
  );
}
