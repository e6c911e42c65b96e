import { signal } from '@preact/signals';

/** What may stand open before the bench. */
export type BenchDialog = 'strike' | 'note' | 'photo' | 'choose' | 'mix-up' | 'reveal' | 'blind' | 'look' | 'keys';

export const openDialog = signal<BenchDialog | null>(null);

/** The reading that it is about; empty when it is about none in particular. */
export const dialogAbout = signal('');

export function show(dialog: BenchDialog, about = ''): void {
  dialogAbout.value = about;
  openDialog.value = dialog;
}

export function closeDialog(): void {
  openDialog.value = null;
}
