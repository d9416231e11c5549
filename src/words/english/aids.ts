/** Voice and pedals, for hands that hold a gauge; off until somebody wants them. */
export const aids = {
  aids: {
    menu: 'Voice and pedal',
    title: 'Voice and pedal',
    lead: 'For hands that hold a gauge. Kept on this machine only.',
    voice: 'Say each station, each number taken, and each question',
    noVoice: 'This browser has no voice.',
    try: 'Try it',
    trial: '25 mm deep, across 90°. 54.012.',
    pedal: 'A pedal types a key. Press it once for each thing it should do:',
    actions: {
      take: 'Take the number and go on',
      again: 'Take it and read the same station again',
      back: 'Back to the station before',
      skip: 'Pass this station over',
    },
    press: (action: string) => `${action}: press the pedal now, or Escape to leave it`,
    set: (action: string, key: string) => `${action}: ${key}. Change it.`,
    choose: (action: string) => `${action}: choose a pedal`,
    none: 'no pedal',
    remove: (action: string) => `Take the pedal off: ${action}`,
    typesText: (key: string) =>
      `The key ${key} is needed for typing and moving. Set the pedal to another one, such as F13 or Page Down.`,
    taken: (key: string, action: string) => `${key} already stands for: ${action}.`,
    next: (place: string) => `Next: ${place}.`,
  },
  spoken: {
    point: 'point',
    minus: 'minus',
    plusMinus: 'plus or minus',
    degrees: 'degrees',
    millimetres: 'millimetres',
    microns: 'microns',
    inches: 'inches',
  },
}
