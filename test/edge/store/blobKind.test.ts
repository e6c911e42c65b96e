import { describe, expect, it } from 'vitest';
import { blobKind, isPhoto } from '../../../src/edge/store/blobKind.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
/** A text in which each letter is one byte, as the start of a binary file is written. */
const raw = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const box = (brands: string) => raw(`\0\0\0${String.fromCharCode(8 + brands.length)}ftyp${brands}\0\0\0\0`);

describe('the kind of a blob', () => {
  it.each([
    ['a JPEG', raw('\xff\xd8\xff\xe0\0\x10JFIF'), 'image/jpeg'],
    ['a PNG', raw('\x89PNG\r\n\x1a\n\0\0\0\rIHDR'), 'image/png'],
    ['a WebP', raw('RIFF\x24\0\0\0WEBPVP8 '), 'image/webp'],
    ['a HEIC', box('heic\0\0\0\0mif1heic'), 'image/heic'],
    ['a HEIC under its structural brand', box('mif1\0\0\0\0mif1heic'), 'image/heic'],
    ['a HEIC by a brand that comes later', box('msf1\0\0\0\0iso8heix'), 'image/heic'],
    ['a PDF', raw('%PDF-1.7\n%\xe2\xe3'), 'application/pdf'],
    ['a log with commas', bytesOf('time,ohms\r\n0,0.000512\r\n'), 'text/csv; charset=utf-8'],
    ['a log with a mark in front', bytesOf('\uFEFFZeit;Ω\n0;0,5 °C\n'), 'text/csv; charset=utf-8'],
    ['a log of one column', bytesOf('0.512\n0.511'), 'text/csv; charset=utf-8'],
  ])('%s', (_, bytes, type) => {
    expect(blobKind(bytes)?.type).toBe(type);
  });

  it.each([
    ['nothing', new Uint8Array()],
    ['blanks', bytesOf(' \n ')],
    ['a page', bytesOf('<!doctype html><script>1</script>')],
    ['a drawing behind blanks', bytesOf('\n  <svg xmlns="http://www.w3.org/2000/svg"/>')],
    ['a page behind a mark', bytesOf('\uFEFF<html>')],
    ['a moving picture', box('isom\0\0\0\0isommp42')],
    ['another picture', raw('GIF89a\x01\0\x01\0')],
    ['a sound', raw('RIFF\x24\0\0\0WAVEfmt ')],
    ['a program', raw('MZ\x90\0\x03')],
    ['text in Latin 1', raw('0;21,5 \xb0C')],
    ['text in UTF-16', raw('\xff\xfe0\0;\x001\0')],
    ['a packed file', raw('PK\x03\x04\x14\0')],
    ['half a start', raw('\x89PN')],
    ['half a box', raw('\0\0\0\x18ftyp')],
  ])('not taken: %s', (_, bytes) => {
    expect(blobKind(bytes)).toBeNull();
  });

  it.each([
    ['a JPEG', raw('\xff\xd8\xff\xe0\0\x10JFIF'), true],
    ['a HEIC', box('heic\0\0\0\0mif1heic'), true],
    ['a PDF', raw('%PDF-1.7\n%\xe2\xe3'), false],
    ['a log', bytesOf('time,ohms\r\n0,0.000512\r\n'), false],
    ['words', bytesOf('# A heading\n'), false],
    ['another picture', raw('GIF89a\x01\0\x01\0'), false],
  ])('a photo or none: %s', (_, bytes, photo) => {
    expect(isPhoto(bytes)).toBe(photo);
  });

  it('reads a view that begins inside a larger buffer', () => {
    const whole = new Uint8Array([0, 0, 0, 0, ...box('heic\0\0\0\0mif1')]);
    expect(blobKind(whole.subarray(4))?.ending).toBe('heic');
  });
});
