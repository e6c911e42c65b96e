#!/usr/bin/env node
import { pathToFileURL } from 'node:url';
import { inProject } from '../scripts/parts/root.mjs';
import { setUp } from '../scripts/parts/setUp.mjs';

await setUp();
await import(pathToFileURL(inProject('dist', 'cli.js')).href);
