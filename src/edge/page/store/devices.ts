/** Which devices may ask the bench computer, told to somebody who sits at it; and how this one becomes one of them. */
import { computed } from '@preact/signals';
import { type Answer, ask, keepToken, turnedAway } from './api.ts';
import { keptSignal } from './kept.ts';

export type Role = 'keeper' | 'recorder' | 'reader';

/** Who the bench computer takes this page for; `device` is null at the bench computer itself. */
export interface Me {
  role: Role;
  device: { id: string; name: string } | null;
}

export interface Device {
  id: string;
  name: string;
  role: Role;
  addedAt: string;
  seenAt: string | null;
  revokedAt: string | null;
}

/** A code that lets one device in, as the bench computer shows it. */
export interface OpenCode {
  code: string;
  role: Role;
  url: string;
  urls: string[];
  /** Modules of the QR code of `url`, row by row, true where dark. */
  qr: boolean[][];
  until: string;
}

export interface Sharing {
  sharing: boolean;
  secure: boolean;
  addresses: string[];
  code: OpenCode | null;
}

const ROLES: readonly unknown[] = ['keeper', 'recorder', 'reader'] satisfies Role[];

/** Null until it is known; the last answer holds while the bench computer is away. */
export const me = keptSignal<Me | null>('cupel.me', null, isMe);

/** Whether this page may only read, and sees sealed parts alone. */
export const readsOnly = computed(() => me.value?.role === 'reader');

/** Asks who this page is taken for; without an answer it stays as it was. */
export async function askWhoIAm(): Promise<void> {
  const answer = await ask<Me>('/api/me');
  if (answer.ok) me.value = answer.value;
}

export const fetchSharing = (): Promise<Answer<Sharing>> => ask('/api/share');
export const fetchDevices = (): Promise<Answer<Device[]>> => ask('/api/devices');
export const openCode = (role: Role): Promise<Answer<OpenCode>> => post('/api/share/open', { role });
export const leaveNetwork = (): Promise<Answer<unknown>> => post('/api/share/end', {});
export const takeOff = (id: string): Promise<Answer<unknown>> =>
  ask(`/api/devices/${encodeURIComponent(id)}`, { method: 'DELETE' });

/** Has this device let in by the code that the bench computer shows. Null when it was, otherwise why not. */
export async function letIn(code: string, name: string): Promise<string | null> {
  const answer = await post<{ token: string; role: Role; device: { id: string; name: string } }>('/api/pair', {
    code,
    name,
  });
  if (!answer.ok) return answer.sentence;
  const { token, role, device } = answer.value;
  if (!keepToken(token))
    return 'This browser keeps nothing, so it would be forgotten at once. Leave the private window and have a new code shown.';
  turnedAway.value = false;
  me.value = { role, device };
  return null;
}

function post<T>(path: string, body: unknown): Promise<Answer<T>> {
  return ask<T>(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
}

function isMe(kept: unknown): kept is Me | null {
  if (kept === null) return true;
  if (typeof kept !== 'object') return false;
  const { role, device } = kept as Partial<Me>;
  return ROLES.includes(role) && (device === null || typeof device?.name === 'string');
}
