import { readFileSync } from 'node:fs';
import { createSecureContext } from 'node:tls';

/** A certificate and its private key, in PEM. */
export interface Tls {
  cert: Buffer;
  key: Buffer;
}

/** The certificate cannot be used; the message is a sentence for the person. */
export class TlsRefusal extends Error {
  override name = 'TlsRefusal';
}

/** Reads a certificate and its key, and makes sure that they belong together. */
export function readTls(certFile: string, keyFile: string): Tls {
  const tls = { cert: readPem(certFile), key: readPem(keyFile) };
  try {
    createSecureContext(tls);
  } catch (error) {
    throw new TlsRefusal(
      `${certFile} and ${keyFile} are not a certificate and its key in PEM form; make them as docs/add-a-phone.md says.`,
      { cause: error },
    );
  }
  return tls;
}

function readPem(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new TlsRefusal(`${file} could not be read; look whether it is there.`, { cause: error });
  }
}
