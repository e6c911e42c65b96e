/** The worker's own script: hears a question, does the job, answers. */

import { sentenceOf } from '../store/sentenceOf.ts';
import { ampsJob } from './ampsJob.ts';
import { assayJob } from './assayJob.ts';
import type { Answered, Asked } from './jobs.ts';
import { logJob } from './logJob.ts';
import { packJob } from './packJob.ts';
import { planJob } from './planJob.ts';
import { publishJob } from './publishJob.ts';
import { readJob } from './readJob.ts';
import { sheetsJob } from './sheetsJob.ts';
import { soFarJob } from './soFarJob.ts';
import { standingJob } from './standingJob.ts';
import { startJob } from './startJob.ts';
import { zipJob } from './zipJob.ts';

const post = (answered: Answered) => postMessage(answered);

addEventListener('message', (event: MessageEvent<Asked>) => {
  const asked = event.data;
  try {
    post({ number: asked.number, ok: true, answer: done(asked) });
  } catch (error) {
    post({ number: asked.number, ok: false, sentence: sentenceOf(error) });
  }
});

function done(asked: Asked) {
  switch (asked.kind) {
    case 'assay':
      return assayJob(asked.ask, (drawn) => post({ number: asked.number, drawn }));
    case 'read':
      return readJob(asked.ask);
    case 'soFar':
      return soFarJob(asked.ask);
    case 'start':
      return startJob(asked.ask);
    case 'plan':
      return planJob(asked.ask, (drawn) => post({ number: asked.number, drawn }));
    case 'sheets':
      return sheetsJob(asked.ask);
    case 'amps':
      return ampsJob(asked.ask);
    case 'log':
      return logJob(asked.ask, (drawn) => post({ number: asked.number, drawn }));
    case 'standing':
      return standingJob(asked.ask, (drawn) => post({ number: asked.number, drawn }));
    case 'publish':
      return publishJob(asked.ask);
    case 'zip':
      return zipJob(asked.ask);
    case 'pack':
      return packJob(asked.ask);
  }
}
