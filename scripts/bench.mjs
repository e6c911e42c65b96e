/** Runs every benchmark and prints what each took. */
import { assaySpeed } from '../bench/assaySpeed.mjs';
import { foldSpeed } from '../bench/fold.mjs';
import { wholeProcess } from '../bench/wholeProcess.mjs';

console.log(await wholeProcess());
console.log(await foldSpeed());
console.log(await assaySpeed());
