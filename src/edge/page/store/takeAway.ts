import { Bench } from '../worker/bench.ts';
import type { Assay } from './assay.ts';

/** Packs a trial and hands the .zip to the browser's downloads; answers with a sentence on what came of it. */
export async function savePackage({ trial, entries, findings }: Assay): Promise<string> {
  const bench = new Bench();
  try {
    const bytes = await bench.ask('pack', { entries, findings });
    const file = `${fileName(trial)}.zip`;
    handOver(new Blob([bytes as BlobPart], { type: 'application/zip' }), file);
    return `${file} is among your downloads.`;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  } finally {
    bench.stop();
  }
}

function handOver(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A trial's id as a file name on any system. */
function fileName(trial: string): string {
  const plain = trial.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^[-.]+|[-.]+$/g, '');
  return plain.slice(0, 80) || 'trial';
}
