/** What a device may do: everything, record, or only look. */
export const DEVICE_ROLES = ['keeper', 'recorder', 'reader'] as const;

export type DeviceRole = (typeof DEVICE_ROLES)[number];

/** A device that was let in, without anything that could let another one in. Times are ISO 8601 in UTC. */
export interface Device {
  id: string;
  name: string;
  role: DeviceRole;
  addedAt: string;
  /** When it last asked for something; null when it never did. */
  seenAt: string | null;
  /** When it was turned away for good; null while it is welcome. */
  revokedAt: string | null;
}

/** A device about to be let in. Of its token only the SHA-256 is kept, in hexadecimal. */
export interface NewDevice {
  id: string;
  name: string;
  role: DeviceRole;
  tokenHash: string;
  at: string;
}

/** The devices that may ask for something over the network. They belong to the store, not to one trial. */
export interface DeviceBook {
  /** Lets a device in. Throws when its id or its token is known already. */
  addDevice(device: NewDevice): Promise<void>;
  /** Every device that was ever let in, revoked ones included, the first one first. */
  devices(): Promise<Device[]>;
  /** The device that holds this token; null when there is none or it was revoked, so that nobody can forget to look. */
  deviceByToken(tokenHash: string): Promise<Device | null>;
  /** Turns a device away for good; the first time counts. False when no device has this id. */
  revokeDevice(id: string, at: string): Promise<boolean>;
  /** Notes that a device asked for something. */
  seenDevice(id: string, at: string): Promise<void>;
}
