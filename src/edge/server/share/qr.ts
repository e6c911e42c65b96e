import QRCode from 'qrcode';

/** Light border that a reader needs around the code, in modules. ISO/IEC 18004:2015, §5.3.8: four. */
const QUIET_ZONE = 4;

/** A text as a QR code: rows of modules, true where dark, without the light border. */
export function qrModules(text: string): boolean[][] {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'M' });
  return Array.from({ length: modules.size }, (_, row) =>
    Array.from({ length: modules.size }, (_, column) => modules.get(row, column) === 1),
  );
}

/** Black on white, whatever the colours of the terminal are (ECMA-48 §8.3.117, "select graphic rendition"). */
const BLACK_ON_WHITE = '\x1b[30;107m';
const AS_BEFORE = '\x1b[0m';
const HALF_BLOCKS = [' ', '▀', '▄', '█'];

/** A QR code for a terminal: two rows of modules in one line of text, with the light border. */
export function qrText(modules: readonly (readonly boolean[])[]): string {
  const size = modules.length + 2 * QUIET_ZONE;
  const dark = (row: number, column: number) => (modules[row - QUIET_ZONE]?.[column - QUIET_ZONE] ? 1 : 0);
  let text = '';
  for (let row = 0; row < size; row += 2) {
    const line = Array.from({ length: size }, (_, column) => dark(row, column) + 2 * dark(row + 1, column));
    text += `${BLACK_ON_WHITE}${line.map((index) => HALF_BLOCKS[index]).join('')}${AS_BEFORE}\n`;
  }
  return text;
}
