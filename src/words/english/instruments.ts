/** The lists of instruments and settings that the surveys of a job share, and what pistons are called. */
export const instruments = {
  instruments: {
    title: 'Instruments',
    lead: 'Listed once for the whole job. What two bores were measured with alike is then known, and drops out of their difference.',
    lists: {
      setUps: 'Settings',
      gauges: 'Gauges',
      standards: 'Rings and micrometers',
      thermometers: 'Thermometers',
    },
    /** Names of those that have none, told apart by a number where a list has several alike. */
    numbered: (kind: string, place: number) => `${kind} ${place}`,
    unnamedSetUp: 'Setting',
    unnamedThermometer: 'Thermometer',
    noThermometer: 'not recorded',
    setUp:
      '{name}: {gauge}, by {standard}. Bore by {boreThermometer}, ring or micrometer by {referenceThermometer}.',
    labels: {
      name: 'Name of the setting',
      gauge: 'Gauge of the setting',
      standard: 'Ring or micrometer of the setting',
      boreThermometer: 'Thermometer at the bore',
      referenceThermometer: 'Thermometer at the ring or micrometer',
    },
    labelOf: (label: string, name: string) => `${label}: ${name}`,
    gaugeLabel: 'Name of the gauge',
    standardLabel: 'Name of the ring or micrometer',
    thermometerLabel: 'Name of the thermometer',
    usedBy: (users: string) => `used by ${users}`,
    unused: 'not used',
    bore: (bore: string) => `bore ${bore}`,
    boreOnce: (bore: string, occasion: string) => `bore ${bore}, ${occasion}`,
    useHere: 'Use for this bore',
    add: {
      setUps: 'Add a setting',
      gauges: 'Add a gauge',
      ring: 'Add a ring',
      micrometer: 'Add a micrometer',
      thermometers: 'Add a thermometer',
    },
    remove: (name: string) => `Remove ${name}`,
    stillUsed: (name: string, users: string) =>
      `${name} cannot go while it is used by ${users}. Choose another there first.`,
  },
  pistons: {
    title: 'Pistons and rings',
    open: 'Pistons',
    loading: 'Loading…',
    show: 'Show a piston',
    numbered: (number: number) => `piston ${number}`,
    ofGrade: (grade: string) => `piston of grade ${grade}`,
    oversized: (called: string, oversize: string) => `${called}, ${oversize}`,
  },
}
