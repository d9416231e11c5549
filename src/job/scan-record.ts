/** A dense scan as it travels within a file. */
export interface EmbeddedScan {
  /** SHA-256 of its bytes, 64 hexadecimal digits. */
  readonly hash: string
  /** Its bytes in base64 (RFC 4648, section 4). */
  readonly base64: string
}
