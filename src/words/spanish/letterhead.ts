import type { letterhead as english } from '../english/letterhead'
import type { Texts } from '../texts'

export const letterhead: Texts<typeof english> = {
  dialog: {
    title: 'Membrete',
    lead: 'Encabeza todos los informes. Se guarda en este navegador para todos los trabajos; ningún trabajo se lo lleva.',
    shopName: 'Nombre del taller',
    address: 'Dirección',
    picture: 'Imagen',
    pictureShown: 'La imagen del taller',
    choose: 'Elegir una imagen…',
    chooseOther: 'Otra imagen…',
    remove: 'Quitar la imagen',
    removed: 'La imagen se ha quitado.',
    putBack: 'Volver a ponerla',
    pictureKept: 'Se reduce (600 píxeles como mucho) y se guarda en este navegador.',
    reading: 'Leyendo la imagen…',
    unreadable: (file) => `${file} no se pudo leer como imagen. Elija un archivo JPEG, PNG o WebP.`,
    appAddress: 'Dirección de Borewall',
    appAddressHow:
      'Donde su taller ofrece Borewall. Con ella cada informe lleva un código que abre su trabajo en el teléfono del cliente.',
    thisPage: 'Usar la dirección de esta página',
    useMended: (address) => `Usar ${address}`,
    saved: 'Guardado en este navegador.',
    notKept: (why) => `No se ha guardado. ${why}`,
    notRead: (why) => `No se pudo leer el membrete. ${why}`,
    again: 'Probar otra vez',
    setAside:
      'Lo que estaba guardado aquí no se pudo leer. Se ha apartado: guárdelo en un archivo desde la lista de trabajos, en «Apartados».',
    setAsideName: 'Membrete',
    newer:
      'Un Borewall más nuevo guarda aquí un membrete; se deja como está. Vuelva a cargar la página para tener ese Borewall.',
  },
  problems: {
    control: 'Contiene un carácter que no se puede imprimir. Bórrelo y vuelva a escribirlo.',
    shopNameTooLong: (most) => `${most} letras como mucho. Acórtelo.`,
    addressTooLong: (most, lines) => `${lines} líneas y ${most} letras como mucho. Acórtela.`,
    appAddress: {
      'no-address': 'Eso no es una dirección. Tiene esta forma: https://shop.example/borewall/.',
      'no-scheme': 'Tiene que empezar por https:// o http://.',
      'other-scheme': 'Tiene que empezar por https:// o http://; un teléfono no puede abrir ninguna otra.',
      password: 'Contiene un nombre o una contraseña, que saldría en todos los informes. Quítelo.',
      fragment: 'Quite lo que sigue a #; ahí va el trabajo.',
      'too-long': '200 letras como mucho: una más larga no deja sitio en el código para el trabajo.',
    },
  },
  reach: {
    'this-machine': 'Solo este equipo puede abrir esa dirección; el teléfono de un cliente, no.',
    'this-network': 'Solo puede abrir esa dirección lo que está en la red de su taller.',
  },
  code: {
    label: 'Código QR que abre este trabajo en Borewall',
    caption:
      'Escanéelo para abrir este trabajo en Borewall. Las lecturas van en el propio código; no se envía nada a ningún sitio.',
    captionWithout: (what) =>
      `Escanéelo para abrir este trabajo en Borewall. Las lecturas van en el propio código; no se envía nada a ningún sitio. No lleva: ${what}.`,
    photographs: (count) => (count === 1 ? '1 fotografía' : `${count} fotografías`),
    scans: (count) => (count === 1 ? 'los radios de 1 barrido' : `los radios de ${count} barridos`),
    notes: (count) => (count === 1 ? '1 nota' : `${count} notas`),
    list: (parts) => parts.join(', '),
    none: {
      'no-address': 'Sin código: el membrete no tiene todavía la dirección de Borewall.',
      'too-large':
        'Sin código: este trabajo es más grande de lo que un teléfono todavía lee del papel. Entregue un archivo.',
      'not-loaded':
        'Sin código: no se pudo cargar una parte de Borewall. Vuelva a cargar la página para probar otra vez.',
    },
  },
  opening: {
    ask: (job, machine, bores, readings) =>
      `Esta dirección contiene un trabajo: ${job}${machine === '' ? '' : `, ${machine}`}, ${bores}, ${readings}. Las fotografías y los radios de los barridos no viajan en una dirección. Si lo abre, se guarda en este navegador junto a los demás trabajos; ninguno de ellos cambia.`,
    untitled: 'sin nombre',
    bores: (count) => (count === 1 ? '1 cilindro' : `${count} cilindros`),
    readings: (count) => (count === 1 ? '1 lectura' : `${count} lecturas`),
    open: 'Abrir el trabajo',
    opened: (job) => `${job} abierto desde la dirección`,
    address: 'La dirección',
    notOpened: {
      damaged:
        'El trabajo de esta dirección no está completo y no se ha abierto. Falta o ha cambiado una parte de la dirección: escanee otra vez el código o copie el enlace entero.',
      'too-large':
        'Esta dirección, al descomprimirla, ocupa más que cualquier informe y no se ha abierto. Quien se la dio puede enviarle un archivo en su lugar.',
      newer:
        'El trabajo de esta dirección lo escribió un Borewall más nuevo. Vuelva a cargar la página para tenerlo y abra entonces la dirección otra vez.',
    },
    unharmed: 'No se ha tocado nada de lo que está guardado aquí.',
  },
}
