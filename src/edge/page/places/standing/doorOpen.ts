import { signal } from '@preact/signals';

/** True while criteria, ranking and tastes stand open behind their one door. */
export const doorOpen = signal(false);

/** Opens the door and brings it into sight. */
export function openDoor(): void {
  doorOpen.value = true;
  requestAnimationFrame(() => {
    const door = document.querySelector<HTMLElement>('.standing-door > summary');
    door?.scrollIntoView({ block: 'start' });
    door?.focus({ preventScroll: true });
  });
}
