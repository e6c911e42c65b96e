/** Light border that a reader needs, in modules. ISO/IEC 18004:2015, §5.3.8: four. */
const QUIET_ZONE = 4;

/** A QR code, dark on light whatever the colours of the page are: readers expect it so. */
export function QrPicture({ modules, label }: { modules: readonly (readonly boolean[])[]; label: string }) {
  const size = modules.length + 2 * QUIET_ZONE;
  const squares = modules.flatMap((row, y) =>
    row.flatMap((dark, x) => (dark ? [`M${x + QUIET_ZONE} ${y + QUIET_ZONE}h1v1h-1z`] : [])),
  );
  return (
    <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <rect width={size} height={size} fill="#ffffff" />
      <path d={squares.join('')} fill="#000000" />
    </svg>
  );
}
