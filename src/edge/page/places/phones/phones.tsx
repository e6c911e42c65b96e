import { useEffect, useState } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { Trouble } from '../../parts/trouble.tsx';
import { type Device, fetchDevices, fetchSharing, type Sharing } from '../../store/devices.ts';
import { CodeShown } from './codeShown.tsx';
import { DeviceList } from './deviceList.tsx';
import { NewCode } from './newCode.tsx';

/** How often the bench computer is asked whether the phone has come, ms. */
const LOOK_EVERY_MS = 2000;

/** Adding phones and taking them off: seen at the bench computer alone. */
export function Phones() {
  const [sharing, setSharing] = useState<Sharing | null>(null);
  const [devices, setDevices] = useState<Device[]>([]);
  const [trouble, setTrouble] = useState('');

  const look = async () => {
    const [shared, listed] = await Promise.all([fetchSharing(), fetchDevices()]);
    if (shared.ok) setSharing(shared.value);
    if (listed.ok) setDevices(listed.value);
    setTrouble(shared.ok ? (listed.ok ? '' : listed.sentence) : shared.sentence);
  };
  useEffect(() => {
    void look();
    const timer = setInterval(() => void look(), LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, []);

  return (
    <Frame title="Phones" places={[{ name: 'Shelf', href: '/', here: false, state: '' }]}>
      <h1>{sentence(sharing, devices)}</h1>
      <Trouble>{trouble}</Trouble>
      {sharing?.code && <CodeShown code={sharing.code} secure={sharing.secure} />}
      {sharing !== null && <NewCode sharing={sharing} onChanged={look} />}
      <DeviceList devices={devices} onChanged={look} />
    </Frame>
  );
}

/** The place's sentence: who can reach the bench now. */
function sentence(sharing: Sharing | null, devices: readonly Device[]): string {
  const welcome = devices.filter((device) => device.revokedAt === null).length;
  if (sharing === null) return 'Phones at the bench.';
  if (!sharing.sharing) return 'Only this computer reaches the bench.';
  if (welcome === 0) return 'The local network reaches the bench; no phone has been added.';
  return welcome === 1 ? 'One phone has been added.' : `${welcome} phones have been added.`;
}
