export const photographTypes = ['image/jpeg', 'image/png', 'image/webp'] as const
export type PhotographType = (typeof photographTypes)[number]

/** A photograph as it travels within a file. */
export interface EmbeddedPhotograph {
  /** SHA-256 of its bytes, 64 hexadecimal digits. */
  readonly hash: string
  readonly type: PhotographType
  /** Its bytes in base64 (RFC 4648, section 4). */
  readonly base64: string
}
