import type { send as english } from '../english/send'
import type { Texts } from '../texts'

export const send: Texts<typeof english> = {
  send: {
    open: 'Enviar',
    title: 'Enviar lo que demuestran las lecturas',
    lead: 'Nada sale de este equipo hasta que usted elija cómo. El texto habla de todos los cilindros, la imagen del que está abierto.',
    text: 'Texto',
    picture: 'Imagen',
    pictureOf: (bore, verdict) => `Imagen para enviar. ${bore}: ${verdict}`,
    drawing: 'Dibujando la imagen…',
    flat: 'Este navegador no dibuja aquí ninguna imagen 3D, así que se envía el mapa plano.',
    noPicture: {
      'no-readings': 'No hay nada que dibujar antes de la primera lectura. El texto se puede enviar.',
      failed: 'La imagen no se pudo dibujar en este navegador. El texto se puede enviar de todos modos.',
    },
    ways: {
      share: 'Compartir texto e imagen…',
      'share-text': 'Compartir el texto…',
      'copy-text': 'Copiar el texto',
      'copy-picture': 'Copiar la imagen',
      'save-text': 'Guardar el texto',
      'save-picture': 'Guardar la imagen',
    },
    saveForPrint: 'Guardar la imagen para imprimir',
    done: {
      share: 'Entregado adonde eligió',
      copiedText: 'Texto copiado',
      copiedPicture: 'Imagen copiada',
      saved: (name) => `Guardado como ${name}, donde este navegador pone sus descargas`,
    },
    handOver: {
      title: 'Un archivo para el dueño',
      lead: 'Una página que se abre en cualquier navegador, sin red: lo que significa en palabras sencillas, la imagen para girar, todas las cifras y lecturas. Borewall la vuelve a abrir como trabajo.',
      make: 'Guardar el archivo para el dueño',
      making: 'Haciendo el archivo…',
      failed: 'El archivo no se pudo hacer en este navegador. Guarde el texto y la imagen en su lugar.',
    },
    cancelled: 'Cerrado sin compartir nada',
    failed: {
      share: 'El sistema no lo aceptó para compartir. Guarde el texto y la imagen, y envíe los archivos.',
      'share-text': 'El sistema no lo aceptó para compartir. Guarde el texto y envíe el archivo.',
      'copy-text': 'Este navegador no dejó copiar el texto. Selecciónelo arriba y cópielo, o guárdelo.',
      'copy-picture': 'Este navegador no dejó copiar la imagen. Guárdela en su lugar.',
      'save-text': 'No se pudo guardar el archivo. Seleccione el texto de arriba y cópielo.',
      'save-picture': 'No se pudo guardar el archivo. Pruebe a copiar la imagen.',
    },
  },
  sentPicture: {
    bore: (name, survey) => `${name}. ${survey}`,
    questionsOpen: (count) =>
      count === 1
        ? 'Hay una pregunta abierta sobre una lectura.'
        : `Hay ${count} preguntas abiertas sobre lecturas.`,
    betweenReadings:
      'Entre las lecturas la pared se dibuja para la vista; el dictamen sale solo de las lecturas.',
    madeWith: (app) => `Dibujado por ${app}.`,
  },
}
