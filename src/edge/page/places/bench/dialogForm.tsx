import type { ComponentChildren } from 'preact';
import { FormDialog } from '../../parts/formDialog.tsx';
import { closed } from './dialogs.tsx';

interface DialogFormProps {
  title: string;
  act: string;
  onAct: () => Promise<string | null>;
  children: ComponentChildren;
}

/** A dialog with one thing to do; the bench's field has the focus again afterwards. */
export function DialogForm(props: DialogFormProps) {
  return <FormDialog {...props} onClose={closed} />;
}
