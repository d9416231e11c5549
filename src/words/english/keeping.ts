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
      gone: 'The job is no longer among those kept in this browser: its data was cleared, or the job was deleted in another tab. Other jobs may be gone too.',
      overtaken:
        'Another tab took this job over before the last change was saved. The change was set aside among the kept jobs.',
    },
    leaving: 'The last change is not saved yet.',
    leaveAnyway: 'Leave it unsaved',
  },
}
