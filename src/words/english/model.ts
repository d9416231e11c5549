/** The wall as a model to print. */
export const model = {
  model: {
    title: 'A model to print',
    lead: (drawn: string) =>
      `This wall as a tube to hold. ${drawn}. Ports are pockets, not holes, so that the tube stays whole; a groove outside, from the deck down, marks the front.`,
    unmeasured:
      'Where nobody measured, the wall is drawn between readings, not measured: the file in colour shows it fainter and with dark lines, the file for a printer cannot. Nothing can be measured from a model.',
    ways: {
      stl: 'Save for a printer (STL)',
      glb: 'Save in colour (glTF)',
    },
    making: 'Making the model…',
    saved: (name: string, size: string) => `Saved as ${name}: ${size}.`,
    size: (height: string, across: string, scale: string) =>
      `${height} high, ${across} across, scale ${scale}`,
    scale: (drawn: string) => `1:${drawn}`,
    none: {
      'wall-meets-axis':
        'At this exaggeration the wall would be drawn through the axis, and no tube is left to print. Choose a smaller one beside the picture.',
    },
    failed: 'The model could not be made in this browser.',
    /** Of the file: job and bore, then this. */
    fileName: (name: string, factor: string, scale: string) => `${name} drawn x${factor} scale ${scale}`,
    /** At the head of an STL, up to 80 letters of ASCII. */
    header: (factor: string, scale: string) =>
      `Bore wall drawn x${factor}, scale ${scale}, mm. Not to measure from.`,
    parts: {
      body: 'body, not the wall',
      measured: 'wall between readings',
      unmeasured: 'wall drawn between readings, not measured',
      'unmeasured-line': 'lines where nobody measured',
    },
    notes: {
      drawn:
        'Differences of the diameter are drawn larger by the exaggeration. Nothing can be measured from it.',
      ports: 'Ports are pockets with square corners, not holes.',
      front: 'The groove outside, from the deck down, is at 0°, the front.',
    },
  },
}
