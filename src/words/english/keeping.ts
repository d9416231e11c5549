/** Whether the job is kept, where, by which tab, and what to do when it is not. */
export const keeping = {
  saving: {
    saved: (time: string) => `Saved ${time}`,
    saving: 'Saving…',
    notYet: 'Unchanged',
    failed: 'Not saved',
    failedKept: 'Not saved. What you entered is still on this page; save it to a file.',
    retry: 'Try again',
    toFile: 'Save to a file',
    keepAgain: 'Keep it again',
    errors: {
      quota: 'This browser has no room left for Borewall. Save the job to a file, then make room.',
      blocked:
        'Another tab holds the kept jobs in an older version. Close the other Borewall tabs, then try again.',
      unavailable:
        'This browser keeps nothing here (a private window, or storage switched off). Save the job to a file before you close the page.',
      mismatch:
        'What the browser stored is not what was sent. Save the job to a file; do not rely on this browser.',
      newer:
        'A newer Borewall keeps a job under the same identity here; it is left as it is. Save this one to a file.',
      'newer-shelf':
        'A newer Borewall has arranged the kept jobs anew, and this older page cannot reach them. Save this job to a file, then reload the page.',
      gone: 'The job is no longer among those kept in this browser: its data was cleared, or the job was deleted in another tab. Other jobs may be gone too.',
      overtaken:
        'Another tab took this job over before the last change was saved. The change was set aside among the kept jobs.',
    },
    unreachable: 'The jobs kept in this browser cannot be reached now.',
    unreachableWhy: {
      quota: 'This browser has no room left for Borewall. Make room, then try again.',
      blocked: 'Another tab holds them in an older version. Close the other Borewall tabs, then try again.',
      unavailable:
        'This browser keeps nothing here (a private window, or storage switched off). What you type lasts only as long as this page: save it to a file before you close it.',
      mismatch: 'What the browser stored is not what was sent.',
      newer: 'A newer Borewall keeps them. Reload the page to get it.',
      'newer-shelf': 'A newer Borewall has arranged them anew. Reload the page to get it.',
      gone: 'They were deleted.',
      overtaken: 'Another tab has taken them over.',
    },
    leaving: 'The last change is not saved yet.',
    leaveAnyway: 'Leave it unsaved',
  },
  /** What became of the jobs in a file of all jobs. */
  jobsTaken: {
    title: (file: string) => `Jobs from ${file}`,
    taken: (count: number) => `Taken: ${count}`,
    copied: (count: number) => `Taken as a copy, since another state is kept here: ${count}`,
    same: (count: number) => `Kept here already, the same: ${count}`,
    refused: (count: number) => `Could not be read: ${count}`,
    limits: (count: number) => `Limits for other jobs, taken: ${count}`,
    limitsUnread: (count: number) => `Limits for other jobs that could not be read: ${count}`,
  },
  /** Where and how safely the job is kept. */
  keeping: {
    title: 'How this job is kept',
    details: (state: string) => `${state}: how this job is kept`,
    inBrowser: 'In this browser only; nothing is sent anywhere. A file outside it is the safe copy.',
    reminder: {
      'never-copied': 'In this browser only.',
      'changed-since': 'Changed since its last file.',
    },
    dismiss: 'Not today',
    dismissLabel: 'Do not remind of this today',
    copied: (when: string) => `Last saved to a file ${when}.`,
    notCopied: 'Not yet saved to a file.',
    persistence: {
      'not-asked': 'The browser is asked to keep the jobs for good at the first change that is saved.',
      granted: 'The browser has promised not to clear the jobs by itself.',
      refused:
        'The browser has not promised to keep the jobs: when the disk runs full it may clear them by itself. A file is safe from that.',
      unknown: 'This browser does not say whether it may clear the jobs by itself.',
    },
    used: (used: string, of: string) => `Borewall uses ${used} of the ${of} that this browser grants it.`,
    megabytes: (count: number) =>
      count < 1000
        ? `${count < 10 ? count.toFixed(1) : Math.round(count)} MB`
        : `${Math.round(count / 1000)} GB`,
    pen: {
      held: 'This tab writes the job; other tabs that show it follow.',
      following: 'Another tab writes the job; this one follows.',
    },
  },
  /** Copies written into a folder of the user's. */
  folder: {
    label: 'Copies in a folder',
    impossible: 'This browser lets no page write into a folder of yours; save files instead.',
    off: 'Each job can also be written into a folder of yours, anew after each save.',
    pick: 'Pick a folder…',
    pickOther: 'Another folder…',
    allow: 'Go on with it',
    leave: 'Write no more copies',
    asks: (folder: string) =>
      `Copies go into the folder ${folder} once you let the browser write there again.`,
    on: (folder: string) => `Copies go into the folder ${folder}.`,
    written: (folder: string, file: string) =>
      `This job stands in the folder ${folder} as ${file}, as it was saved last.`,
    failed: {
      gone: (folder: string) =>
        `The folder ${folder} is not there any more, so no copy was written. Pick another.`,
      refused: (folder: string) =>
        `The browser does not let Borewall write into the folder ${folder}. Pick it again to allow it.`,
      'no-room': (folder: string) => `There is no room in the folder ${folder}, so no copy was written.`,
      'not-written': (folder: string) =>
        `The copy in the folder ${folder} could not be written whole. It is tried again at the next save.`,
    },
  },
  /** The job as it stood earlier. */
  versions: {
    menu: 'Earlier versions…',
    title: 'Earlier versions of this job',
    lead: (most: number) =>
      `Kept in this browser when a session begins, every ten minutes of work, and before one of them is gone back to: ${most} at most, fewer the older they are.`,
    none: 'None yet. The first is kept once the job is changed in a later session or after ten minutes.',
    why: {
      session: 'as it was when a session began',
      interval: 'in the course of work',
      restore: 'before an earlier version was restored',
      'take-over': 'before another tab took it over',
      replace: 'before a file took its place',
    },
    held: (name: string, readings: string) => `${name}, ${readings}`,
    unreadable: 'This version cannot be read by this Borewall.',
    look: 'Look',
    lookAt: (when: string) => `Look at the version of ${when}`,
    textOf: (when: string) => `Findings of the version of ${when}`,
    restore: 'Restore',
    restoreOf: (when: string) => `Restore the version of ${when}`,
    restored: (when: string) => `Back to ${when}; you can undo this`,
  },
  /** Which tab writes the job. */
  pen: {
    label: 'Which tab writes',
    following: 'Another tab writes this job. Here you see each change once it is saved.',
    handingOver: 'Another tab is taking this job over…',
    lost: {
      saved: 'Another tab has taken this job over. What you entered here is saved.',
      'set-aside':
        'Another tab has taken this job over. Your last change came too late to be saved; it was set aside among the kept jobs.',
      unsaved:
        'Another tab has taken this job over. Your last change could not be saved; it is still on this page.',
    },
    takeOver: 'Write here instead',
    unsavedAsk:
      'The other tab has a change that it could not save. Look there first; or take the job over as it was saved last.',
    takeOverAnyway: 'Take it over all the same',
    unguarded:
      'This browser cannot tell whether another tab writes the same job. Keep it open in one tab only.',
    replaced:
      'What another tab or a file had put in the place of this job was set aside among the kept jobs.',
    notReplaced:
      'Another tab writes this job, so it was not replaced. Take it over first, or open the file as a copy.',
  },
}
