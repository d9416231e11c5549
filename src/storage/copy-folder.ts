import type { Attempt } from './shelf-transaction'

/** The mark that holds the folder that copies are written to. */
const folderMark = 'copy-folder'

/** The folder that copies are written to, as the browser hands it over again. */
export interface CopyFolder {
  /** Undefined where none was chosen, or what is kept is no folder. */
  read(): Promise<FileSystemDirectoryHandle | undefined>
  /** Undefined: none from now on. */
  write(folder: FileSystemDirectoryHandle | undefined): Promise<void>
}

export function copyFolderOn(attempt: Attempt): CopyFolder {
  return {
    read: () =>
      attempt(async (database) => {
        const kept: unknown = await database.get('marks', folderMark)
        const isFolder =
          typeof FileSystemDirectoryHandle !== 'undefined' && kept instanceof FileSystemDirectoryHandle
        return isFolder ? kept : undefined
      }),
    write: (folder) =>
      attempt(async (database) => {
        if (folder === undefined) await database.delete('marks', folderMark)
        else await database.put('marks', folder, folderMark)
      }),
  }
}
