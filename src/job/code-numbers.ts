/**
 * Small whole numbers in few bits: Golomb-Rice codes whose parameter follows what came before, as in ISO/IEC 14495-1
 * (A.2, A.5.2 and A.5.3). Numbers of one kind share a parameter.
 */
export class NumberWriter {
  private readonly bits: number[] = []
  private readonly means = new Map<string, Mean>()

  write(value: number, kind: string): void {
    const mean = meanOf(this.means, kind)
    const shift = mean.shift()
    const folded = value < 0 ? -value * 2 - 1 : value * 2
    const high = Math.floor(folded / 2 ** shift)
    if (high < mostHigh) {
      this.push(2 ** (high + 1) - 2, high + 1)
      this.push(folded % 2 ** shift, shift)
    } else {
      this.push(2 ** mostHigh - 1, mostHigh)
      this.push(folded, wide)
    }
    mean.take(folded)
  }

  bytes(): Uint8Array {
    const bytes = new Uint8Array(Math.ceil(this.bits.length / 8))
    for (const [index, bit] of this.bits.entries()) {
      bytes[index >> 3] = (bytes[index >> 3] ?? 0) | (bit << (7 - (index & 7)))
    }
    return bytes
  }

  private push(value: number, count: number): void {
    for (let bit = count - 1; bit >= 0; bit -= 1) this.bits.push(Math.floor(value / 2 ** bit) % 2)
  }
}

export class NumberReader {
  private at = 0
  private readonly means = new Map<string, Mean>()

  constructor(private readonly bytes: Uint8Array) {}

  /** The next number; undefined where the bytes end before it does. */
  read(kind: string): number | undefined {
    const mean = meanOf(this.means, kind)
    const shift = mean.shift()
    let high = 0
    while (high < mostHigh && this.pull(1) === 1) high += 1
    const folded = high === mostHigh ? this.pull(wide) : high * 2 ** shift + this.pull(shift)
    if (this.at > this.bytes.length * 8) return undefined
    mean.take(folded)
    return folded % 2 === 1 ? -(folded + 1) / 2 : folded / 2
  }

  private pull(count: number): number {
    let value = 0
    for (let bit = 0; bit < count; bit += 1) {
      const byte = this.bytes[this.at >> 3] ?? 0
      value = value * 2 + ((byte >> (7 - (this.at & 7))) & 1)
      this.at += 1
    }
    return value
  }
}

/** From so many ones on a number stands in full, in so many bits. */
const mostHigh = 20
const wide = 42
/** Numbers to be written lie within so much of 0. */
export const mostWritten = 2 ** 40

/** What numbers of a kind came to so far, the last ones counting most. */
class Mean {
  private sum = 6
  private count = 1

  shift(): number {
    let shift = 0
    while (this.count * 2 ** shift < this.sum && shift < wide) shift += 1
    return shift
  }

  take(value: number): void {
    this.sum += value
    this.count += 1
    if (this.count < 32) return
    this.sum = Math.floor(this.sum / 2)
    this.count /= 2
  }
}

function meanOf(means: Map<string, Mean>, kind: string): Mean {
  const mean = means.get(kind) ?? new Mean()
  means.set(kind, mean)
  return mean
}
