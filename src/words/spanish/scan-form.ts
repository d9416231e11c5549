import type { scanForm as english } from '../english/scan-form'
import type { Texts } from '../texts'

export const scanForm: Texts<typeof english> = {
  title: 'Forma del barrido',
  aboutFile: (file) => `Barrido de ${file}`,
  roundness: 'Redondez, nivel peor',
  roundnessDetail: (depth) =>
    `a ${depth}; una diferencia de radios por la zona mínima (ISO 12181), la mitad de una ovalización si es un óvalo simple`,
  roundnessSquares: (depth) =>
    `a ${depth}; una diferencia de radios en torno al círculo de mínimos cuadrados`,
  noRoundness: 'Ningún nivel tiene radios todo alrededor, así que no se da redondez.',
  cylindricity: 'Cilindricidad',
  cylindricityDetail: 'zona mínima (ISO 12180), de todos los niveles en torno a un solo eje recto',
  noCylindricity: 'Menos de dos niveles tienen radios todo alrededor, así que no se da cilindricidad.',
  oval: 'Óvalo, nivel más ovalado',
  ovalDetail: (depth, axis) => `a ${depth}, máximo a ${axis}; una diferencia de diámetros`,
  ovalNone: (depth, most) => `a ${depth}; no destaca ninguna dirección, como mucho ${most}`,
  twoContact: 'Como lo encontrarían dos palpadores',
  twoContactDetail: (depth) =>
    `diámetro máximo menos mínimo a ${depth}, de los ejes con metal en los dos extremos`,
  axis: 'Eje del palpador radial',
  axisFigure: (farthest) => `${farthest} desviado`,
  axisDetail: 'en el nivel donde más se desvía; descontado de todas las cifras de aquí',
  range: (value, low, high) => `${value} (de ${low} a ${high})`,
  probeShows: (round, cylinder) =>
    `Un palpador radial que repite como este muestra hasta ${round} en un nivel perfectamente redondo, y ${cylinder} en un cilindro perfecto.`,
  nearGaps: (count) =>
    `El filtro se apoya en un solo lado en ${count} valores, junto a lumbreras: tómelos con cuidado.`,
  noSize:
    'Un barrido muestra la forma y ninguna medida: nada de esto dice si el cilindro está dentro de sus límites.',
  noDiameter:
    'Dé el diámetro aproximado del cilindro (--diameter 60, en mm) para que se busquen marcas: su anchura en mm depende de él.',
  diameterRange: 'Un diámetro es un número de 1 a 2000, en mm.',
  diameterForScan: '--diameter va con un archivo de radios.',
}
