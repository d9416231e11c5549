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
