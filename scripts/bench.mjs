/** Runs every benchmark and prints what each took. */
import { assaySpeed } from '../bench/assaySpeed.mjs';
import { currentSpeed } from '../bench/current.mjs';
import { foldSpeed } from '../bench/fold.mjs';
import { importToPageSpeed } from '../bench/importToPage.mjs';
import { keystrokeSpeed } from '../bench/keystroke.mjs';
import { shelfSpeed } from '../bench/shelf.mjs';
import { acknowledgedLatency, openingOneTrial } from '../bench/store.mjs';
import { wholeProcess } from '../bench/wholeProcess.mjs';

console.log(await wholeProcess());
console.log(await foldSpeed());
console.log(await assaySpeed());
console.log(await currentSpeed());
console.log(await keystrokeSpeed());
console.log(await importToPageSpeed());
console.log(await shelfSpeed());
console.log(await acknowledgedLatency());
// A tenth of what bench/store.mjs does by itself, which writes a file of 2.4 GB.
console.log(await openingOneTrial(500_000));
