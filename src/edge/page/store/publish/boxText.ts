import { signal } from '@preact/signals';

/** Most characters that the description box takes; what most boxes take at least. */
export const boxLimit = signal(5000);
/** Where each part was published, by its name, as typed; kept while the page is open. */
export const boxLinks = signal<Readonly<Record<string, string>>>({});
