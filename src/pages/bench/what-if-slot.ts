import { type ComponentType, createContext } from 'react'
import type { Evidence } from '../../core/decision/evidence'

/** Where a decision is tried out; it needs a worker, which is for another layer to start. Nothing where there is none. */
export const WhatIfSlot = createContext<ComponentType<{ readonly evidence: Evidence }>>(() => null)
