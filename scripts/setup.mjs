import { setUp } from './parts/setUp.mjs';

await setUp();
