import { QrPicture } from '../../parts/qrPicture.tsx';
import type { OpenCode } from '../../store/devices.ts';

/** The code that is open: to be photographed, or to be typed. */
export function CodeShown({ code, secure }: { code: OpenCode; secure: boolean }) {
  const until = new Date(code.until).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  return (
    <section class="code-shown" aria-label="The code">
      <QrPicture modules={code.qr} label={`QR code of ${code.url}`} />
      <div>
        <p class="code">
          <b>{`${code.code.slice(0, 3)} ${code.code.slice(3)}`}</b>
        </p>
        <p>Point the phone’s camera at the picture, or open one of these on it and type the code:</p>
        <ul>
          {code.urls.map((url) => (
            <li key={url}>
              <code>{url.replace(/#.*$/, '')}</code>
            </li>
          ))}
        </ul>
        <p>It adds one phone, until {until}. After five wrong tries another code takes its place.</p>
        {!secure && (
          <p>
            The phone keeps what is recorded through any outage, as long as the page stays open on it. To load the page
            anew without a network takes a certificate; docs/add-a-phone.md tells how.
          </p>
        )}
      </div>
    </section>
  );
}
