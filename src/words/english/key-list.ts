/** Every key that does something, by where the focus is. */
export const keyList = {
  keyList: {
    menu: 'Keys',
    title: 'Keys',
    groups: [
      {
        name: 'Anywhere',
        keys: [
          ['Ctrl Z', 'Undo'],
          ['Ctrl Y, or Shift Ctrl Z', 'Redo'],
          ['?', 'This list'],
          ['a number, then Enter', 'The next reading, also from a gauge that types'],
        ],
      },
      {
        name: 'The field for the next reading',
        keys: [
          ['Enter', 'Take it and go on'],
          ['Escape', 'Leave it'],
        ],
      },
      {
        name: 'The readings',
        keys: [
          ['arrows, Home, End', 'From cell to cell; with Shift choose several'],
          ['Ctrl Home, Ctrl End', 'First and last cell'],
          ['Enter, F2', 'Correct what stands there'],
          ['Delete', 'Clear it'],
          ['Tab, then Enter', 'The question about it, where one is marked'],
          ['Ctrl C, Ctrl X, Ctrl V', 'To and from a spreadsheet'],
        ],
      },
      {
        name: 'The picture',
        keys: [
          ['arrows', 'Turn and tilt'],
          ['Shift and arrows', 'Move'],
          ['+ and −', 'Closer and further'],
          ['Home', 'Back to the front'],
          ['Escape', 'Back to the wall, while other walls are drawn'],
        ],
      },
      {
        name: 'Show',
        keys: [
          ['arrows, Page Up, Page Down, Space', 'From one sentence to the next, and back'],
          ['Home, End', 'First and last'],
          ['Escape', 'Back to what is said; then to the bench'],
        ],
      },
      {
        name: 'The flat map and the charts',
        keys: [['arrows', 'From reading to reading']],
      },
    ],
  },
} as const
