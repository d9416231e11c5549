import './qr-code.css'

/** The dark modules of a QR code as one path, in modules from its upper left corner. */
export interface QrDrawing {
  readonly modules: number
  readonly path: string
}

/** Light modules round a code, without which it is not found (ISO/IEC 18004:2015, 6.3.8). */
const quiet = 4

/** Side of a module on paper and screen, mm. */
export const moduleMm = 0.5

/** Side of a code with its quiet zone, mm. */
export function qrSideMm({ modules }: Pick<QrDrawing, 'modules'>): number {
  return (modules + 2 * quiet) * moduleMm
}

/** A QR code in black on white, whatever the page looks like, at a size that follows from its modules. */
export function QrCode({ drawing, label }: { readonly drawing: QrDrawing; readonly label: string }) {
  const { modules, path } = drawing
  const side = modules + 2 * quiet
  return (
    <svg
      className="qr-code"
      viewBox={`${-quiet} ${-quiet} ${side} ${side}`}
      style={{ width: `${qrSideMm(drawing)}mm`, height: `${qrSideMm(drawing)}mm` }}
      role="img"
      aria-label={label}
    >
      <rect x={-quiet} y={-quiet} width={side} height={side} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  )
}
