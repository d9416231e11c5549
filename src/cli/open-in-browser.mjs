import { spawn } from 'node:child_process'

/**
 * The command that opens an address on this desktop, or nothing where there is none to open it on.
 * BROWSER=none and CI keep it shut.
 * @param {string} address
 * @param {NodeJS.Platform} platform
 * @param {NodeJS.ProcessEnv} environment
 * @returns {{ command: string, parameters: string[] } | undefined}
 */
export function openingCommand(address, platform = process.platform, environment = process.env) {
  if (environment.BROWSER === 'none' || environment.CI) return undefined
  if (platform === 'darwin') return { command: 'open', parameters: [address] }
  if (platform === 'win32') return { command: 'cmd', parameters: ['/c', 'start', '', address] }
  if (environment.DISPLAY || environment.WAYLAND_DISPLAY) {
    return { command: 'xdg-open', parameters: [address] }
  }
  return undefined
}

/**
 * Opens the address in the desktop's browser. Resolves with whether that was set going; the address is
 * printed by the caller in any case, so a desktop without a browser loses nothing.
 * @param {string} address
 * @returns {Promise<boolean>}
 */
export function openInBrowser(address) {
  const opening = openingCommand(address)
  if (opening === undefined) return Promise.resolve(false)
  return new Promise((resolve) => {
    const child = spawn(opening.command, opening.parameters, { stdio: 'ignore', detached: true })
    child.once('error', () => resolve(false))
    child.once('spawn', () => {
      child.unref()
      resolve(true)
    })
  })
}
