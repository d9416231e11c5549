const field = 'job'

/** The address that opens Borewall with the job of a code. */
export function addressOfCode(appAddress: string, digits: string): string {
  return `${appAddress}#${field}=${digits}`
}

/** What the fragment of an address holds in the place of a code, whatever it is. */
export function codeInAddress(fragment: string): string | undefined {
  return new URLSearchParams(fragment.replace(/^#/, '')).get(field) ?? undefined
}
