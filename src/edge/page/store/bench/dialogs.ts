import { signal } from '@preact/signals';

/** What may stand open before the bench. */
export type BenchDialog = 'strike' | 'note' | 'photo' | 'choose' | 'mix-up' | 'reveal' | 'blind' | 'keys';

export const openDialog = signal<BenchDialog | null>(null);

export function show(dialog: BenchDialog): void {
  openDialog.value = dialog;
}

export function closeDialog(): void {
  openDialog.value = null;
}
