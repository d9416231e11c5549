/** Hands a file to the browser to be saved among its downloads. */
export function download(file: File): void {
  const address = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = address
  link.download = file.name
  link.click()
  // The browser has taken the blob by then; giving it back at once would spoil the download in some.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
