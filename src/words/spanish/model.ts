import type { model as english } from '../english/model'
import type { Texts } from '../texts'

export const model: Texts<typeof english> = {
  model: {
    title: 'Un modelo para imprimir',
    lead: (drawn) =>
      `Esta pared como un tubo que se puede coger. ${drawn}. Las lumbreras son huecos ciegos, no agujeros, para que el tubo quede entero; una ranura por fuera, desde la cara superior hacia abajo, marca el frente.`,
    unmeasured:
      'Donde nadie midió, la pared está dibujada entre lecturas, no medida: el archivo en color lo muestra más pálido y con líneas oscuras, el archivo para una impresora no puede. De un modelo no se puede medir nada.',
    ways: {
      stl: 'Guardar para una impresora (STL)',
      glb: 'Guardar en color (glTF)',
    },
    making: 'Haciendo el modelo…',
    saved: (name, size) => `Guardado como ${name}: ${size}.`,
    size: (height, across, scale) => `${height} de alto, ${across} de ancho, escala ${scale}`,
    scale: (drawn) => `1:${drawn}`,
    none: {
      'wall-meets-axis':
        'Con esta exageración la pared se dibujaría a través del eje, y no quedaría tubo que imprimir. Elija una menor junto a la imagen.',
    },
    failed: 'No se pudo hacer el modelo en este navegador.',
    fileName: (name, factor, scale) => `${name} exagerado x${factor} escala ${scale}`,
    header: (factor, scale) =>
      `Pared de cilindro, exagerada x${factor}, escala ${scale}, mm. No sirve para medir.`,
    parts: {
      body: 'cuerpo, no la pared',
      measured: 'pared entre lecturas',
      unmeasured: 'pared dibujada entre lecturas, no medida',
      'unmeasured-line': 'líneas donde nadie midió',
    },
    notes: {
      drawn:
        'Las diferencias del diámetro se dibujan mayores por la exageración. No se puede medir nada en él.',
      ports: 'Las lumbreras son huecos ciegos de esquinas vivas, no agujeros.',
      front: 'La ranura por fuera, desde la cara superior hacia abajo, está a 0°, el frente.',
    },
  },
}
