import { Name } from '../../parts/name.tsx';
import { type Device, type Role, takeOff } from '../../store/devices.ts';

const ROLE_WORDS: Readonly<Record<Role, string>> = { recorder: 'records', reader: 'reads', keeper: 'keeps' };

/** The phones that were added, those taken off last. */
export function DeviceList({ devices, onChanged }: { devices: readonly Device[]; onChanged: () => Promise<void> }) {
  if (devices.length === 0) return null;
  const order = [...devices].sort((a, b) => Number(a.revokedAt !== null) - Number(b.revokedAt !== null));
  return (
    <table class="trials devices">
      <thead>
        <tr>
          <th scope="col">Phone</th>
          <th scope="col">May</th>
          <th scope="col">Last heard</th>
          <th scope="col">
            <span class="hidden">Act</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {order.map((device) => (
          <tr key={device.id}>
            <th scope="row">
              <Name>{device.name}</Name>
            </th>
            <td>{ROLE_WORDS[device.role]}</td>
            <td>{moment(device.revokedAt ?? device.seenAt ?? device.addedAt)}</td>
            <td>
              {device.revokedAt === null ? (
                <button
                  type="button"
                  class="link"
                  aria-label={`Take off ${device.name}`}
                  onClick={() => void takeOff(device.id).then(onChanged)}
                >
                  Take off
                </button>
              ) : (
                'taken off'
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function moment(at: string): string {
  return new Date(at).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
}
