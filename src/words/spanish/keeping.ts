import type { keeping as english } from '../english/keeping'
import type { Texts } from '../texts'

export const keeping: Texts<typeof english> = {
  saving: {
    saved: (time) => `Guardado ${time}`,
    saving: 'Guardando…',
    notYet: 'Sin cambios',
    failed: 'No guardado',
    failedKept: 'No guardado. Lo que introdujo sigue en esta página; guárdelo en un archivo.',
    retry: 'Intentar otra vez',
    toFile: 'Guardar en un archivo',
    keepAgain: 'Guardarlo de nuevo',
    errors: {
      quota:
        'A este navegador no le queda sitio para Borewall. Guarde el trabajo en un archivo y después haga sitio.',
      blocked:
        'Otra pestaña tiene abiertos los trabajos guardados en una versión más antigua. Cierre las demás pestañas de Borewall e inténtelo otra vez.',
      unavailable:
        'Este navegador no guarda nada aquí (una ventana privada, o el almacenamiento desactivado). Guarde el trabajo en un archivo antes de cerrar la página.',
      mismatch:
        'Lo que el navegador guardó no es lo que se le envió. Guarde el trabajo en un archivo; no confíe en este navegador.',
      newer:
        'Un Borewall más nuevo guarda aquí un trabajo con la misma identidad; se deja como está. Guarde este en un archivo.',
      'newer-shelf':
        'Un Borewall más nuevo ha reordenado los trabajos guardados, y esta página más antigua no llega a ellos. Guarde este trabajo en un archivo y después recargue la página.',
      gone: 'El trabajo ya no está entre los guardados en este navegador: se borraron sus datos, o el trabajo se eliminó en otra pestaña. Puede que falten también otros trabajos.',
      overtaken:
        'Otra pestaña tomó este trabajo antes de que se guardara el último cambio. El cambio quedó apartado en la lista de trabajos.',
    },
    unreachable: 'Ahora no se puede llegar a los trabajos guardados en este navegador.',
    unreachableWhy: {
      quota: 'A este navegador no le queda sitio para Borewall. Haga sitio e inténtelo otra vez.',
      blocked:
        'Otra pestaña los tiene abiertos en una versión más antigua. Cierre las demás pestañas de Borewall e inténtelo otra vez.',
      unavailable:
        'Este navegador no guarda nada aquí (una ventana privada, o el almacenamiento desactivado). Lo que escriba dura solo lo que dure esta página: guárdelo en un archivo antes de cerrarla.',
      mismatch: 'Lo que el navegador guardó no es lo que se le envió.',
      newer: 'Los guarda un Borewall más nuevo. Recargue la página para tenerlo.',
      'newer-shelf': 'Un Borewall más nuevo los ha reordenado. Recargue la página para tenerlo.',
      gone: 'Se eliminaron.',
      overtaken: 'Otra pestaña los ha tomado.',
    },
    leaving: 'El último cambio no está guardado todavía.',
    leaveAnyway: 'Salir sin guardarlo',
  },
  jobsTaken: {
    title: (file) => `Trabajos de ${file}`,
    taken: (count) => `Tomados: ${count}`,
    copied: (count) => `Tomados como copia, porque aquí se guarda otro estado: ${count}`,
    same: (count) => `Ya guardados aquí, iguales: ${count}`,
    refused: (count) => `No se pudieron leer: ${count}`,
    limits: (count) => `Límites para otros trabajos, tomados: ${count}`,
    limitsUnread: (count) => `Límites para otros trabajos que no se pudieron leer: ${count}`,
  },
  keeping: {
    title: 'Cómo se guarda este trabajo',
    details: (state) => `${state}: cómo se guarda este trabajo`,
    inBrowser:
      'Solo en este navegador; no se envía nada a ninguna parte. La copia segura es un archivo fuera de él.',
    reminder: {
      'never-copied': 'Solo en este navegador.',
      'changed-since': 'Cambiado desde su último archivo.',
    },
    dismiss: 'Hoy no',
    dismissLabel: 'No recordarlo más hoy',
    copied: (when) => `Guardado en un archivo por última vez: ${when}.`,
    notCopied: 'Todavía no guardado en un archivo.',
    persistence: {
      'not-asked':
        'Con el primer cambio que se guarde se pide al navegador que conserve los trabajos para siempre.',
      granted: 'El navegador ha prometido no borrar los trabajos por su cuenta.',
      refused:
        'El navegador no ha prometido conservar los trabajos: si el disco se llena, puede borrarlos por su cuenta. Un archivo está a salvo de eso.',
      unknown: 'Este navegador no dice si puede borrar los trabajos por su cuenta.',
    },
    used: (used, of) => `Borewall usa ${used} de los ${of} que le concede este navegador.`,
    megabytes: (count) =>
      count < 1000
        ? `${count < 10 ? count.toFixed(1).replace('.', ',') : Math.round(count)} MB`
        : `${Math.round(count / 1000)} GB`,
    pen: {
      held: 'Esta pestaña escribe el trabajo; las demás que lo muestran la siguen.',
      following: 'Otra pestaña escribe el trabajo; esta la sigue.',
    },
  },
  folder: {
    label: 'Copias en una carpeta',
    impossible:
      'Este navegador no deja que ninguna página escriba en una carpeta suya; guarde archivos en su lugar.',
    off: 'Cada trabajo se puede escribir también en una carpeta suya, de nuevo cada vez que se guarda.',
    pick: 'Elegir una carpeta…',
    pickOther: 'Otra carpeta…',
    allow: 'Seguir haciéndolo',
    leave: 'No escribir más copias',
    asks: (folder) =>
      `Las copias irán a la carpeta ${folder} en cuanto usted permita otra vez al navegador escribir allí.`,
    on: (folder) => `Las copias van a la carpeta ${folder}.`,
    written: (folder, file) =>
      `Este trabajo está en la carpeta ${folder} como ${file}, tal como se guardó por última vez.`,
    failed: {
      gone: (folder) =>
        `La carpeta ${folder} ya no existe, así que no se escribió ninguna copia. Elija otra.`,
      refused: (folder) =>
        `El navegador no deja que Borewall escriba en la carpeta ${folder}. Elíjala otra vez para permitirlo.`,
      'no-room': (folder) => `No hay sitio en la carpeta ${folder}, así que no se escribió ninguna copia.`,
      'not-written': (folder) =>
        `La copia en la carpeta ${folder} no se pudo escribir entera. Se intentará otra vez la próxima vez que se guarde.`,
    },
  },
  versions: {
    menu: 'Versiones anteriores…',
    title: 'Versiones anteriores de este trabajo',
    lead: (most) =>
      `Se guardan en este navegador cuando empieza una sesión, cada diez minutos de trabajo y antes de volver a una de ellas: ${most} como mucho, menos cuanto más antiguas.`,
    none: 'Ninguna todavía. La primera se guarda cuando el trabajo cambia en una sesión posterior o pasados diez minutos.',
    why: {
      session: 'como estaba cuando empezó una sesión',
      interval: 'en el curso del trabajo',
      restore: 'antes de restaurar una versión anterior',
      'take-over': 'antes de que otra pestaña lo tomara',
      replace: 'antes de que un archivo ocupara su lugar',
    },
    held: (name, readings) => `${name}, ${readings}`,
    unreadable: 'Este Borewall no puede leer esta versión.',
    look: 'Ver',
    lookAt: (when) => `Ver la versión: ${when}`,
    textOf: (when) => `Resultados de la versión: ${when}`,
    restore: 'Restaurar',
    restoreOf: (when) => `Restaurar la versión: ${when}`,
    restored: (when) => `De vuelta a la versión ${when}; se puede deshacer`,
  },
  pen: {
    label: 'Qué pestaña escribe',
    following: 'Otra pestaña escribe este trabajo. Aquí ve cada cambio en cuanto se guarda.',
    handingOver: 'Otra pestaña está tomando este trabajo…',
    lost: {
      saved: 'Otra pestaña ha tomado este trabajo. Lo que introdujo aquí está guardado.',
      'set-aside':
        'Otra pestaña ha tomado este trabajo. Su último cambio llegó demasiado tarde para guardarse; quedó apartado en la lista de trabajos.',
      unsaved:
        'Otra pestaña ha tomado este trabajo. Su último cambio no se pudo guardar; sigue en esta página.',
    },
    takeOver: 'Escribir aquí',
    unsavedAsk:
      'La otra pestaña tiene un cambio que no pudo guardar. Mire allí primero; o tome el trabajo como se guardó por última vez.',
    takeOverAnyway: 'Tomarlo de todos modos',
    unguarded:
      'Este navegador no puede saber si otra pestaña escribe el mismo trabajo. Téngalo abierto en una sola pestaña.',
    replaced:
      'Lo que otra pestaña o un archivo había puesto en lugar de este trabajo quedó apartado en la lista de trabajos.',
    notReplaced:
      'Otra pestaña escribe este trabajo, así que no se reemplazó. Tómelo antes, o abra el archivo como copia.',
  },
}
